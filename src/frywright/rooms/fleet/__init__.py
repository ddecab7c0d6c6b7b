"""Fleet: many sites, releases."""
