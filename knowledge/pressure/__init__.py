"""What the gauge shows whatever the cause: readings, patterns, alarms."""
