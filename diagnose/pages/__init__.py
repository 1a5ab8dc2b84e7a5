"""Pages that stand by themselves: for the bench and for the customer, on paper or a screen."""
