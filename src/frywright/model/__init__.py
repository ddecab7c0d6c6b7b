"""Names of the trade as values: food, fryer, program, kitchen, place, units; no numbers of the world."""
