"""What is said to people, in their language and units, and what they type."""
