// The address of the sign-in page that leads back to where the person was.

/** Answers the sign-in address for a page and its search text (without "?"). */
export function signInAddress(location: string, search: string): string {
  const back = search === '' ? location : `${location}?${search}`;
  return back === '/' ? '/sign-in' : `/sign-in?back=${encodeURIComponent(back)}`;
}

/** Answers the sign-in address for a person who is known already, for example because they opened the plant just now. */
export function signInAddressFor(person: string, location: string): string {
  return `/sign-in?${new URLSearchParams({ back: location, person })}`;
}

/** Answers the sign-in name an address of the sign-in page carries; empty when it carries none. */
export function personToSignIn(search: string): string {
  return new URLSearchParams(search).get('person') ?? '';
}

/** Answers the address to go back to; one that leads to another site, or to signing in again, is not followed. */
export function addressAfterSignIn(search: string): string {
  const back = new URLSearchParams(search).get('back');
  if (back === null || !/^\/(?![/\\])/.test(back) || back.startsWith('/sign-in')) return '/';
  return back;
}
