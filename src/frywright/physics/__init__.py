"""What happens in piece, vat and lid: histories of a cook; knows no rule."""
