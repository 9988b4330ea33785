// A choice from a list with its label; the device's own list, which works with gloves and a screen reader.

import { type ComponentProps, useId } from 'react';
import { FieldFrame, type FieldTexts, fieldAttributes } from './field-frame.tsx';

export interface SelectOption {
  readonly value: string;
  readonly text: string;
  readonly isDisabled?: boolean;
}

interface SelectFieldProps extends FieldTexts, Omit<ComponentProps<'select'>, 'className' | 'children'> {
  readonly options: readonly SelectOption[];
}

export function SelectField(props: SelectFieldProps) {
  const { label, hint, problem, isOptional, forGloves, options, id: givenId, ...select } = props;
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
      <select {...select} {...fieldAttributes(id, texts)}>
        {options.map((option) => (
          <option key={option.value} value={option.value} disabled={option.isDisabled ?? false}>
            {option.text}
          </option>
        ))}
      </select>
    </FieldFrame>
  );
}
