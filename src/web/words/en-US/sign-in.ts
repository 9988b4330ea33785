// Texts of the page where a person signs in.

export const signIn = {
  title: 'Sign in',
  lead: 'Looking up a reading needs no sign-in. Writing into the ledger does: every entry carries a name.',
  leadOfPlant: 'Every entry in the ledger carries a name.',
  oneTimePassword: 'Six digits of your authenticator',
  invited: 'I have an invitation',
  device: 'This is a device of the crew',
  whoAreYou: 'Who are you?',
  name: 'Sign-in name',
  nameHint: 'For example ana.reyes, as the administrator entered it.',
  password: 'Password',
  samplePassword: (password: string) =>
    `Everybody on the sample plant has the password "${password}". It is filled in.`,
  signInButton: 'Sign in',
  signingIn: 'Signing in ...',
  chooseFirst: 'Choose who you are.',
  passwordFirst: 'Type the password.',
} as const;
