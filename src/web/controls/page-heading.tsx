// The title of a page, one sentence on what it is for, and room for what can be done there.

import { type ReactNode, useEffect } from 'react';
import { words } from '../words/words.ts';
import styles from './page-heading.module.css';

interface PageHeadingProps {
  readonly title: string;
  readonly lead?: string;
  readonly children?: ReactNode;
}

export function PageHeading({ title, lead, children }: PageHeadingProps) {
  useEffect(() => {
    document.title = words.app.windowTitle(title);
  }, [title]);
  return (
    <div className={styles.heading}>
      <div>
        <h1 className={styles.title}>{title}</h1>
        {lead === undefined ? null : <p className={styles.lead}>{lead}</p>}
      </div>
      {children}
    </div>
  );
}
