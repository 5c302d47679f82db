// What was looked at last stays readable without the network: the list of jars and the pages of jars. A page always comes from the shop's computer where that answers; nothing
// that records is ever kept. Browsers run this over encrypted addresses only.
const KEEP = "looked-at-1";
const MOST = 60;
const isPage = (url) => !url.search && (url.pathname === "/" || /^\/j\/[^/]+$/i.test(url.pathname));
const isPart = (url) => /^\/(type\/|icon-|bench\.js$)/.test(url.pathname);

addEventListener("install", () => skipWaiting());
addEventListener("activate", (event) => event.waitUntil(clients.claim()));

const keep = async (request, answer) => {
  const cache = await caches.open(KEEP);
  await cache.put(request.url, answer);
  const pages = (await cache.keys()).filter((one) => isPage(new URL(one.url)));
  for (const old of pages.slice(0, Math.max(0, pages.length - MOST))) await cache.delete(old);
};

const told = (text) => `<p class="told" role="status">${text}</p>`;

const page = (text, status, headers) => new Response(text, { status, headers: { "Content-Type": "text/html; charset=utf-8", ...headers } });

const asItWas = async (request) => {
  const cache = await caches.open(KEEP);
  const kept = await cache.match(request.url);
  if (!kept) return page(`<!DOCTYPE html><html lang="en"><meta name="viewport" content="width=device-width"><title>No answer</title><h1>No answer from the shop's computer</h1><p>This page was not looked at before on this device. <a href="/">All jars</a></p></html>`, 503);
  const when = new Date(kept.headers.get("Date")).toLocaleString([], { dateStyle: "medium", timeStyle: "short" });
  const text = await kept.text();
  return page(text.replace('<main id="main">', (main) => main + told(`No answer from the shop's computer. This page is as it was on ${when}.`)), 200, { "Content-Security-Policy": kept.headers.get("Content-Security-Policy") ?? "default-src 'none'" });
};

const look = async (request) => {
  let answer;
  try {
    answer = await fetch(request);
  } catch {
    return asItWas(request);
  }

  // Led elsewhere, the device is known here no longer, or the jar has another address: what was kept goes.
  if (answer.type === "opaqueredirect" || answer.status === 401) await caches.delete(KEEP);
  else if (answer.ok) await keep(request, answer.clone());
  return answer;
};

const part = async (request) => {
  try {
    const answer = await fetch(request);
    if (answer.ok) await keep(request, answer.clone());
    return answer;
  } catch (fault) {
    const kept = await (await caches.open(KEEP)).match(request.url);
    if (kept) return kept;
    throw fault;
  }
};

addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== location.origin) return;
  if (event.request.mode === "navigate" && isPage(url)) event.respondWith(look(event.request));
  else if (isPart(url)) event.respondWith(part(event.request));
});
