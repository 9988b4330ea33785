// Which files an entry names, read from its body as it is stored: nothing of it is trusted.

/** The kinds of entry whose body holds something with attached files, and under which name. */
const holders: Readonly<Record<string, string>> = {
  'certificate-filed/2': 'certificate',
  'certificate-amended/1': 'certificate',
  'laboratory-filed/1': 'laboratory',
  'standard-filed/1': 'standard',
};

/** Answers the SHA-256 of each file an entry names; none for kinds that name none. */
export function filesNamedBy(kind: string, body: unknown): readonly string[] {
  const holder = holders[kind];
  if (holder === undefined) return [];
  const { files } = members(members(body)[holder]);
  return Array.isArray(files) ? files.map((file) => String(members(file).sha256)) : [];
}

function members(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
}
