"""What the words state: a frame or a pass for every fact of the contract."""
