/** How the fragment of a link begins; apart from reading one, which few pages have to. */
export const LINK_KEY = "#w1=";

export function isLink(hash: string): boolean {
  return hash.startsWith(LINK_KEY);
}
