// A link that looks like a button: it goes somewhere, it changes nothing.

import type { ReactNode } from 'react';
import { Link } from 'wouter';
import styles from './button.module.css';

interface ButtonLinkProps {
  readonly href: string;
  readonly look?: 'primary' | 'plain';
  readonly forGloves?: boolean;
  readonly children: ReactNode;
}

export function ButtonLink({ href, look = 'plain', forGloves = false, children }: ButtonLinkProps) {
  const names = [styles.button, styles[look], forGloves ? styles.gloves : ''];
  return (
    <Link href={href} className={names.filter(Boolean).join(' ')}>
      {children}
    </Link>
  );
}
