"""The words of book, cards and command, apart from what computes and places them."""
