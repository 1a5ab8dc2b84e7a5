"""Station topend: cam, valve gear, timing drive and turbo."""
