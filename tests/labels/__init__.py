"""What the skewed book should print: page by page the heads, the labels, and the digits by the oracle's reckoning."""
