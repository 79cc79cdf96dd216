"""Reading pain: words, places, cues, scopes, signs, scores, and a judgement over them. Enter by `bot.notation.pain`."""
