"""What a covering costs: the showroom's price books asked for each piece, and what a quote comes to."""
