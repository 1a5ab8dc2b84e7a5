"""One job as one TOML file: schema, loading, writing."""
