"""Files from strangers become samples and pixels here, each in a child process with limits of its own."""
