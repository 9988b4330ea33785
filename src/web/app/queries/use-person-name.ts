// The name behind the id an entry is signed with, where the plant tells its people's names.

import { usePeople } from './use-people.ts';

/** Answers a function from id to name; an id nobody is known by is shown as it is. */
export function usePersonName(): (id: string) => string {
  const people = usePeople();
  return (id) => people.data?.people.find((person) => person.id === id)?.name ?? id;
}
