// Textos de lo que puede fallar entre la página y el servidor. La frase misma viene del servidor.

import type { Catalogue } from '../catalogue.ts';
import type { problems as english } from '../en-US/problems.ts';

export const problems: Catalogue<typeof english> = {
  noConnectionTitle: 'Sin conexión con Jackledger',
  noConnectionText: 'El servidor no responde. Revise la red y que el servidor esté en marcha.',
  unexpectedTitle: 'No se pudo entender la respuesta',
  unexpectedText: 'Esta página puede ser más antigua que el servidor. Cargue la página de nuevo.',
  notDone: 'No se hizo',
  goTo: (page) => `Ir a ${page}`,
  needed: (what) => `Se necesita: ${what}`,
  tryAgain: 'Intentar de nuevo',
  advice: {
    'not-signed-in': 'Entre e intente de nuevo; nada de lo que escribió se pierde.',
    'role-not-allowed': 'Pídalo a quien pueda hacerlo, o entre como esa persona.',
    'other-site':
      'No se escribió nada. Abra Jackledger en su propia dirección, escribiéndola o desde su marcador, y hágalo ahí de nuevo.',
    'ledger-locked': 'Otro programa escribe en la bitácora. Espere un momento e intente de nuevo.',
    'ledger-conflict': 'Alguien más fue más rápido. Mire la página otra vez y luego intente de nuevo.',
    'ledger-broken': 'Nada se escribe en una bitácora dañada. Avise ahora al gerente de calidad.',
    'clock-behind-ledger':
      'No se guardó nada. Pida al administrador que ponga en hora la máquina donde corre el servidor y luego intente de nuevo.',
    'ledger-write-failed': 'No se guardó nada. Revise el disco y luego intente de nuevo.',
    'internal-error': 'No se guardó nada. Intente de nuevo; si persiste, avise al administrador.',
  },
};
