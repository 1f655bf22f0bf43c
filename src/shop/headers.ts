// What every answer says about what a page may do: only what comes from this server, and nothing that needs more than plain
// http. "upgrade-insecure-requests" is left out on purpose: on a shop's own network it would break every page.

const policy = [
  "default-src 'self'",
  // the layout solver is compiled code
  "script-src 'self' 'wasm-unsafe-eval'",
  "worker-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
  "form-action 'self'",
].join('; ');

export const headers: Readonly<Record<string, string>> = {
  'content-security-policy': policy,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
};

/** Files named by what is in them are kept; the page itself is asked for each time. */
export const cacheFor = (path: string): string =>
  /[\\/]assets[\\/]/.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache';
