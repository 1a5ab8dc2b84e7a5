"""What several tests share: running commands, sample engines and cases, independent oracles."""
