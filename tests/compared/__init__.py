"""The whole against outside things: confirmed cases, published tables, the trade's practice."""
