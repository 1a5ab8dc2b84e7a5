"""Real cases whose root cause was confirmed: how high does the confirmed cause rank?"""
