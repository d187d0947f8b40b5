"""What clients, consultants and workrooms ask of the pieces; one question a file."""
