"""Every sentence that a person reads, by whom it is for. Plain text, no markup."""
