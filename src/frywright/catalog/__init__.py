"""Published and invented numbers with their sources, and the reader of kitchen files."""
