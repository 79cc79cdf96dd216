// Talks to the server: JSON in, JSON out; an error carries the server's own words.

export async function ask(path, body) {
  const options = body === undefined ? {} : {
    method: "POST",
    headers: body instanceof FormData ? {} : { "Content-Type": "application/json" },
    body: body instanceof FormData ? body : JSON.stringify(body),
  };
  const reply = await fetch(path, options);
  const given = await reply.json().catch(() => ({}));
  if (!reply.ok) throw new Error(given.error || `The server answered ${reply.status}.`);
  return given;
}

export const act = (person, name, body = {}) => ask(`/people/${person}/${name}`, body);
