"""A copy of what is kept of somebody, or of a whole practice: a zip with a workbook to read and JSON to take along."""
