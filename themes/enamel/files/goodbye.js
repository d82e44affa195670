// What stands at /offline.js when a theme leaves offline.js empty: it takes the
// worker of before out of the browsers of readers, and all that was kept.
addEventListener("install", () => skipWaiting());
addEventListener("activate", (event) => event.waitUntil((async () => {
  for (const name of await caches.keys()) if (name.startsWith("stillroom-")) await caches.delete(name);
  await registration.unregister();
})()));
