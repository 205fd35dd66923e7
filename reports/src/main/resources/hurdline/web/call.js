// Calls of the server. The key comes once, for the code in the page's own address, and goes along in a header.

let key = sessionStorage.getItem("key") ?? "";

export const call = async (method, name, values) => {
  const headers = {"X-Hurdline-Key": key};
  if (values) headers["Content-Type"] = "application/json";
  const reply = await fetch("/api/" + name, {method, headers, body: values && JSON.stringify(values)});
  if (!reply.ok) throw Object.assign(new Error(await reply.text()), {status: reply.status});
  return reply.json();
};

// The code serves once; neither history nor bookmarks keep it.
export const enter = async () => {
  const code = location.hash.slice(1);
  if (!code) return;
  history.replaceState(null, "", "/");
  key = (await call("POST", "enter", {code})).key;
  sessionStorage.setItem("key", key);
};
