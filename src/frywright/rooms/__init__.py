"""The rooms of the product: what a person does. Cook, day, care and records do not import each other."""
