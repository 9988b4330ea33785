// Textos de invitaciones, pases de dispositivos y la cuenta propia. Español de México.

import type { Catalogue } from '../catalogue.ts';
import type { account as english } from '../en-US/account.ts';

export const account: Catalogue<typeof english> = {
  title: 'Su cuenta',
  leadOf: (name, id) => `${name}, que entra como ${id}.`,
  signInFirst: 'Entre para ver su cuenta.',

  passwordTitle: 'Cambiar la contraseña',
  passwordLead: 'En todos los demás dispositivos se cierra su sesión.',
  password: 'Contraseña actual',
  newPassword: 'Contraseña nueva',
  newPasswordHint: 'Al menos 12 caracteres',
  newPasswordShort: 'Una contraseña de al menos 12 caracteres.',
  changePassword: 'Cambiar la contraseña',
  passwordChanged: 'La contraseña está cambiada. En todos los demás dispositivos se cerró la sesión.',

  secondTitle: 'Segundo factor',
  secondLead:
    'Un autenticador en su teléfono muestra seis dígitos, que al entrar se piden además de la contraseña. Quien lo pierde necesita una invitación nueva de un administrador.',
  secondMayNot: 'El segundo factor es para calidad y administradores.',
  secondInUse: 'Hay un segundo factor en uso.',
  enrol: 'Preparar un segundo factor',
  secretTitle: 'El secreto para su autenticador',
  secretWhat: 'Escríbalo en el autenticador, o abra esta dirección en el teléfono donde está:',
  oneTimePassword: 'Seis dígitos que el autenticador muestra ahora',
  confirm: 'Ponerlo en uso',
  confirmed: 'El segundo factor está en uso desde la próxima entrada.',
  remove: 'Quitar el segundo factor',
  removed: 'El segundo factor está quitado.',

  everywhereTitle: 'Salir en todas partes',
  everywhereLead:
    'Cierra todas sus sesiones, también esta: después de perder un teléfono o de dejar abierto un escritorio.',
  everywhere: 'Salir en todas partes',

  invitationTitle: 'Tomar una invitación',
  invitationLead:
    'Su administrador le dio un nombre de entrada y un código de un solo uso. La contraseña que ponga ahora no la conoce nadie más.',
  signInName: 'Nombre de entrada',
  code: 'Código de un solo uso',
  codeHint: 'Cuatro grupos de cuatro; no importan minúsculas ni guiones faltantes',
  setPassword: 'Poner la contraseña',

  deviceTitle: 'Hacer de este un dispositivo de la cuadrilla',
  deviceLead:
    'Calidad o un administrador admitió este teléfono o tableta y tiene un código de un solo uso para él. Desde entonces consulta lecturas sin que nadie haya entrado, y no hace nada más.',
  deviceId: 'Nombre del dispositivo',
  takePass: 'Tomar el pase',
};
