"""What gauge and lamp do, and when; noises and circumstances."""
