"""What has been worked out before, kept in the user's own folder of caches: it may be deleted at any moment."""
