"""Pages set into a PDF, in as many processes as cores, and the stages of a build."""
