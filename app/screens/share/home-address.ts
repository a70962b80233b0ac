import { homepage } from '../../../package.json';

/**
 * Where the link of a card leads: to where this app is served, or, on a maker's own machine, to the app's homepage,
 * once it has one (addresses under `.example` are placeholders, RFC 2606).
 */
export function homeAddress(here: Location): string {
  const own = here.hostname === 'localhost' || here.hostname === '[::1]' || here.hostname.startsWith('127.');
  const placeholder = new URL(homepage).hostname.endsWith('.example');
  return own && !placeholder ? homepage : here.origin + here.pathname;
}
