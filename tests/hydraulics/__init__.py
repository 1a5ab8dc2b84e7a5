"""Laws of pump, relief valve, bearings, leaks and oil, and the circuit they make."""
