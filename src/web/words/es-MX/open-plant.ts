// Textos de la página que abre una bitácora nueva.

import type { Catalogue } from '../catalogue.ts';
import type { openPlant as english } from '../en-US/open-plant.ts';

export const openPlant: Catalogue<typeof english> = {
  title: 'Abrir la planta',
  lead: 'Esta bitácora es nueva. Nombre la planta y a la persona que la administra. El código está en la terminal donde se inició el servidor.',
  alreadyOpenTitle: 'La planta está abierta',
  alreadyOpen: (plant) =>
    `Esta bitácora ya se abrió antes, como ${plant}. Se abre una vez; aquí no hay nada que llenar.`,
  code: 'Código de la terminal',
  plantName: 'Nombre de la planta',
  timeZone: 'Zona horaria',
  timeZoneHint: 'Los vencimientos se cuentan en días de esta zona. Se queda como está.',
  name: 'Su nombre',
  nameHint: 'Como queda en la bitácora.',
  id: 'Nombre de entrada',
  idHint: 'Letras minúsculas, dígitos, puntos o guiones, por ejemplo ana.reyes',
  password: 'Contraseña',
  passwordHint: 'Al menos 12 caracteres.',
  fillIn: 'Llene este campo.',
  button: 'Abrir la planta',
  opening: 'Escribiendo los primeros asientos ...',
};
