"""The web page: trust, saving, photos, attacks, whole jobs."""
