"""A small HTTP client of the pages' API, by itself."""
