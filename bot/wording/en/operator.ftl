# What the operator's rarer commands say.

cli-again = { $count ->
    [0] Nothing was set aside.
    [one] One message is taken up again.
   *[other] { $count } messages are taken up again.
}
cli-forget-nobody = There is no client called { $name }.
cli-forget-who = { $name }, with { $coach }, joined { $joined }, id { $client }
cli-forget-which = Several bear that name: say which with --id.
cli-forget-sure = Delete all that is kept of { $name }, for good?
cli-forget-done = Deleted. Copies made before today still hold it until they run out.
cli-forget-kept = Nothing was deleted.
cli-forget-neither = Say whom: a name, or --id.
cli-reseal-so-far = { $seen } sealed texts looked at, { $anew } sealed anew …
cli-reseal-done = { $anew } of { $seen } sealed texts were sealed anew. The newest key of { $keyfile } seals everything now: the older lines can go from it, but keep them with the copies of the database that were made before.
cli-coach-nobody = There is no coach called { $name }.
cli-coach-who = { $name }, joined { $joined }, { $clients ->
    [one] one client
   *[other] { $clients } clients
}, id { $coach }
