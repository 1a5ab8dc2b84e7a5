"""One folder for each station of the oil's path: findings and checks, causes and links, rules, parts, tasks."""
