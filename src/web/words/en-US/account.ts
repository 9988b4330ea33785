// Texts of invitations, device passes and one's own account. American English.

export const account = {
  title: 'Your account',
  leadOf: (name: string, id: string) => `${name}, who signs in as ${id}.`,
  signInFirst: 'Sign in to see your account.',

  passwordTitle: 'Change the password',
  passwordLead: 'On every other device you are signed out.',
  password: 'Password now',
  newPassword: 'New password',
  newPasswordHint: 'At least 12 characters',
  newPasswordShort: 'A password of at least 12 characters.',
  changePassword: 'Change the password',
  passwordChanged: 'The password is changed. Every other device is signed out.',

  secondTitle: 'Second factor',
  secondLead:
    'An authenticator on your telephone shows six digits, which signing in then asks for besides the password. Who loses it needs a new invitation from an administrator.',
  secondMayNot: 'A second factor is for quality and administrators.',
  secondInUse: 'A second factor is in use.',
  enrol: 'Set up a second factor',
  secretTitle: 'The secret for your authenticator',
  secretWhat: 'Type it into the authenticator, or open this address on the telephone it is on:',
  oneTimePassword: 'Six digits the authenticator shows now',
  confirm: 'Take it into use',
  confirmed: 'The second factor is in use from the next sign-in on.',
  remove: 'Remove the second factor',
  removed: 'The second factor is removed.',

  everywhereTitle: 'Sign out everywhere',
  everywhereLead: 'Ends every session of yours, this one too: after a telephone was lost, or a desk left open.',
  everywhere: 'Sign out everywhere',

  invitationTitle: 'Take an invitation',
  invitationLead:
    'Your administrator gave you a sign-in name and a one-time code. The password you set now is known to nobody else.',
  signInName: 'Sign-in name',
  code: 'One-time code',
  codeHint: 'Four groups of four; small letters and missing hyphens do not matter',
  setPassword: 'Set the password',

  deviceTitle: 'Make this a device of the crew',
  deviceLead:
    'Quality or an administrator admitted this telephone or tablet and has a one-time code for it. From then on it looks up readings with nobody signed in, and does nothing else.',
  deviceId: 'Name of the device',
  takePass: 'Take the pass',
} as const;
