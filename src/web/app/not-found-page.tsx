// What an address without a page shows.

import { Link } from 'wouter';
import { PageHeading } from '../controls/page-heading.tsx';
import { words } from '../words/words.ts';

export function NotFoundPage() {
  return (
    <>
      <PageHeading title={words.app.notFoundTitle} />
      <p>
        {words.app.notFoundText} <Link href="/">{words.app.setTheGauge}</Link>
      </p>
    </>
  );
}
