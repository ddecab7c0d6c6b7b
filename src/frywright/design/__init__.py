"""Search, proof, window and transfer of programs; cards as values."""
