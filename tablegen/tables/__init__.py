"""Reference tables, one module a group: settings in, frozen rows of finished figures out, no page in sight."""
