// A button. `primary` once a page at most, `plain` for the rest, `grave` for what cannot be taken back.

import type { ComponentProps } from 'react';
import styles from './button.module.css';

interface ButtonProps extends ComponentProps<'button'> {
  readonly look?: 'primary' | 'plain' | 'grave';
  /** As high as a hand in a glove needs. */
  readonly forGloves?: boolean;
}

export function Button({ look = 'plain', forGloves = false, type = 'button', className, ...rest }: ButtonProps) {
  const names = [styles.button, styles[look], forGloves ? styles.gloves : '', className ?? ''];
  return <button type={type} className={names.filter(Boolean).join(' ')} {...rest} />;
}
