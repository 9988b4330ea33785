// The way to the sign-in page and back.

import { describe, expect, test } from 'vitest';
import {
  addressAfterSignIn,
  personToSignIn,
  signInAddress,
  signInAddressFor,
} from '../../../../src/web/app/sign-in-address.ts';

const searchOf = (address: string) => address.split('?')[1] ?? '';

describe('after signing in', () => {
  test('the person is back where they were, with what they had chosen', () => {
    const address = signInAddress('/', 'pair=P-05&force=140+kN');
    expect(addressAfterSignIn(searchOf(address))).toBe('/?pair=P-05&force=140+kN');
  });

  test('the first page follows where nothing else is asked for', () => {
    expect(signInAddress('/', '')).toBe('/sign-in');
    expect(addressAfterSignIn('')).toBe('/');
  });

  test('a person known already is carried along', () => {
    const search = searchOf(signInAddressFor('ana.reyes', '/people'));
    expect(personToSignIn(search)).toBe('ana.reyes');
    expect(addressAfterSignIn(search)).toBe('/people');
    expect(personToSignIn('back=%2F')).toBe('');
  });

  test.each(['https://elsewhere.example', '//elsewhere.example', '/\\elsewhere.example', '/sign-in?back=/', 'due'])(
    'the address %s is not followed',
    (back) => {
      expect(addressAfterSignIn(new URLSearchParams({ back }).toString())).toBe('/');
    },
  );
});
