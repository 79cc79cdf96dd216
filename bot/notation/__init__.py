"""Text to training values and back: what people type, and how we print what we understood. Pure."""
