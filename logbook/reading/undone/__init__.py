"""What of his work was not done, not all the way, came off again or waits."""
