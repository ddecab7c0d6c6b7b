"""Is it allowed: rules by place and date, judged on any history."""
