"""One job is one TOML file that a person can read, edit and keep under version control."""
