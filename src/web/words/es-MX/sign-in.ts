// Textos de la página donde entra una persona.

import type { Catalogue } from '../catalogue.ts';
import type { signIn as english } from '../en-US/sign-in.ts';

export const signIn: Catalogue<typeof english> = {
  title: 'Entrar',
  lead: 'Consultar una lectura no requiere entrar. Escribir en la bitácora sí: cada asiento lleva un nombre.',
  leadOfPlant: 'Cada asiento de la bitácora lleva un nombre.',
  oneTimePassword: 'Seis dígitos de su autenticador',
  invited: 'Tengo una invitación',
  device: 'Este es un dispositivo de la cuadrilla',
  whoAreYou: '¿Quién es usted?',
  name: 'Nombre de entrada',
  nameHint: 'Por ejemplo ana.reyes, como lo escribió el administrador.',
  password: 'Contraseña',
  samplePassword: (password) => `En la planta de muestra todos tienen la contraseña "${password}". Ya está escrita.`,
  signInButton: 'Entrar',
  signingIn: 'Entrando ...',
  chooseFirst: 'Elija quién es usted.',
  passwordFirst: 'Escriba la contraseña.',
};
