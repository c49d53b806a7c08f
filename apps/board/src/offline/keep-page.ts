/**
 * Asks the browser to keep the page for days without a network.
 *
 * Only where a browser allows it: over https, or on this machine itself. Elsewhere an open page still works offline, and
 * keeps its work, but cannot be opened anew.
 */
export function keepPage(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  // After the board is there: keeping it must not slow the first opening down.
  const register = () => {
    navigator.serviceWorker.register('/service-worker.js').catch(() => undefined); // the page works without
  };
  if (document.readyState === 'complete') register();
  else window.addEventListener('load', register, { once: true });
}
