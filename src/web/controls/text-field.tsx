// One line of text with its label; takes what react-hook-form's `register` gives.

import { type ComponentProps, useId } from 'react';
import { FieldFrame, type FieldTexts, fieldAttributes } from './field-frame.tsx';

type TextFieldProps = FieldTexts & Omit<ComponentProps<'input'>, 'className'>;

export function TextField({ label, hint, problem, isOptional, forGloves, id: givenId, ...input }: TextFieldProps) {
  const ownId = useId();
  const id = givenId ?? ownId;
  const texts: FieldTexts = {
    label,
    hint,
    problem,
    ...(isOptional === undefined ? {} : { isOptional }),
    ...(forGloves === undefined ? {} : { forGloves }),
  };
  return (
    <FieldFrame id={id} texts={texts}>
      <input type="text" autoComplete="off" {...input} {...fieldAttributes(id, texts)} />
    </FieldFrame>
  );
}
