import type { Cam, Choice } from '../answers.ts';
import { aboutShop } from '../declare.ts';

/** CAM software that is there. */
export const cam = aboutShop<Choice<Cam>>({
  id: 'cam',
  section: 'programming',
  title: 'CAM software',
  path: 'control.cam',
  ask: () => 'With what are programs written in your shop?',
  hint: 'CAM software works the paths of the tools out from a drawing or a model.',
  why: 'Tilted work needs a post for the machine and a simulation of it, before the first part; what is not there costs money and time.',
  readBy: ['features', 'payback'],
  field: {
    kind: 'choice',
    options: () => [
      { value: 'none', label: 'none', about: 'no CAM software: programs are typed at the machine' },
      { value: 'threeAxis', label: 'three-axis', about: 'CAM software for three axes' },
      {
        value: 'fiveAxis',
        label: 'five-axis',
        about: 'CAM software for five axes, with simulation of the machine',
      },
    ],
  },
  unsure: { as: 'each-kind' },
  get: (answers) => answers.control.cam,
  set: (answers, cam) => ({ ...answers, control: { ...answers.control, cam } }),
});
