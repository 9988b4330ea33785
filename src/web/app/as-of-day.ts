// The day in the address of a page that shows the plant as it stood then. It goes along from page to page and into every
// question put to the server; on such a page nothing can be written.

import { useLocation, useSearch } from 'wouter';

/** Pages that can be seen as of a day. Nobody sets a gauge or enters a run on a day gone by. */
const datedPages = ['/due', '/equipment', '/part', '/in-doubt', '/ledger', '/rules', '/review'];

export function canBeDated(path: string): boolean {
  return datedPages.some((page) => path === page || path.startsWith(`${page}/`));
}

interface Address {
  readonly pathname: string;
  readonly search: string;
}

/** Answers the day an address asks for, as it is written there; null where it asks for today. */
export function dayAsked({ pathname, search }: Address): string | null {
  const day = new URLSearchParams(search).get('asOf')?.trim() ?? '';
  return day === '' || !canBeDated(pathname) ? null : day;
}

/** Answers an address of a page with the day of the page that leads to it, unless it names one or cannot have one. */
export function keepDay(to: string, from: Address = window.location): string {
  const day = dayAsked(from);
  const address = new URL(to, window.location.origin);
  if (day === null || !canBeDated(address.pathname) || address.searchParams.has('asOf')) return to;
  address.searchParams.set('asOf', day);
  return `${address.pathname}${address.search}${address.hash}`;
}

/** Answers an address of the server with the day of the page that asks. */
export function withDay(path: string, from: Address = window.location): string {
  const day = dayAsked(from);
  if (day === null) return path;
  return `${path}${path.includes('?') ? '&' : '?'}asOf=${encodeURIComponent(day)}`;
}

export function useAsOfDay(): string | null {
  const [pathname] = useLocation();
  const search = useSearch();
  return dayAsked({ pathname, search });
}
