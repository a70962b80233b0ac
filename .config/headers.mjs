// What a host says with every file: a page's own policy cannot carry all of it, and workers have none of their own.
// The build writes it to dist/_headers, which several hosts read; DEVELOPERS.md tells what others must be told.

/** Only files of our own, no inline code, and one named policy for the addresses of workers. */
export const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  // A PDF of our own making, in a frame that is printed.
  'frame-src blob:',
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types hemling',
].join('; ');

/** What the app asks a device for; everything else a page might ask is off. */
const FEATURES = [
  ...['camera', 'clipboard-read', 'clipboard-write', 'screen-wake-lock', 'web-share'].map((name) => `${name}=(self)`),
  ...['accelerometer', 'bluetooth', 'display-capture', 'geolocation', 'gyroscope', 'hid', 'magnetometer', 'microphone'],
  ...['midi', 'payment', 'publickey-credentials-get', 'serial', 'usb', 'xr-spatial-tracking'],
].map((feature) => (feature.includes('=') ? feature : `${feature}=()`));

/** With every answer. */
const ALWAYS = {
  'Content-Security-Policy': `${POLICY}; frame-ancestors 'none'`,
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': FEATURES.join(', '),
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
};

/** How long a browser may go on with its copy: for ever where the name tells the content, else never unasked. */
const CACHED = {
  '/*': 'no-cache',
  '/assets/*': 'public, max-age=31536000, immutable',
};

/** The headers of a file, by its path below the app's address. @param {string} path @returns {Record<string, string>} */
export function headersOf(path) {
  return { ...ALWAYS, 'Cache-Control': path.startsWith('assets/') ? CACHED['/assets/*'] : CACHED['/*'] };
}

/** The same as a file for hosts: a pattern of paths, and below it the headers of what it matches, later lines over earlier ones. */
export function headersFile() {
  const lines = (/** @type {Record<string, string>} */ headers) =>
    Object.entries(headers).map(([name, value]) => `  ${name}: ${value}`);
  return [
    '/*',
    ...lines(ALWAYS),
    `  Cache-Control: ${CACHED['/*']}`,
    '/assets/*',
    '  ! Cache-Control',
    `  Cache-Control: ${CACHED['/assets/*']}`,
    '',
  ].join('\n');
}
