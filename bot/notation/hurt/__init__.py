"""Reading pain: words, places, cues, scopes, signs, scores and the judgement over them. Enter by `bot.notation.pain`."""
