/** The two scripts of ours that a page may start by address: the drafting worker and the service worker. */
const OURS = /\.(js|ts)$/;

type Policy = { createScriptURL(address: string): string };
type PolicyMaker = { createPolicy(name: string, rules: Policy): Policy };

const rules: Policy = { createScriptURL: ours };
const maker = (globalThis as { trustedTypes?: PolicyMaker }).trustedTypes;
const policy = maker?.createPolicy('hemling', rules) ?? rules;

/**
 * An address that the page's content policy lets a worker or service worker be started from.
 * @param address of a script of this app, relative or absolute
 * @throws {TypeError} when it is not a script on this app's own origin
 */
export function trustedAddress(address: string): string {
  return policy.createScriptURL(address);
}

function ours(address: string): string {
  const { origin, pathname } = new URL(address, document.baseURI);
  if (origin !== location.origin || !OURS.test(pathname)) throw new TypeError('foreign-script');
  return address;
}
