import { describe, expect, test } from 'vitest';
import { begun, blockReplies, go, oneBlock, screen } from './talk.ts';

/** What both shells draw; a change here is a change of their contract. */
describe('screens', () => {
  test('the first question', () => {
    expect(screen(begun())).toMatchInlineSnapshot(`
      {
        "accepted": null,
        "ask": "Do you measure in millimeters or in inches?",
        "because": null,
        "current": {
          "from": "usual",
          "values": [
            "mm",
          ],
          "words": "millimeters",
        },
        "error": null,
        "hint": "Only for what you type without a unit: "3 1/2 in" and "88.9 mm" are understood everywhere.",
        "id": "units",
        "input": {
          "kind": "choice",
          "options": [
            {
              "about": "mm, kg",
              "label": "millimeters",
              "value": "mm",
            },
            {
              "about": "in, lb",
              "label": "inches",
              "value": "inch",
            },
          ],
        },
        "kind": "question",
        "notSure": "taken as millimeters",
        "part": null,
        "progress": {
          "needed": null,
          "number": 1,
          "of": null,
          "open": 35,
        },
        "said": null,
        "section": {
          "id": "start",
          "title": "To begin with",
        },
        "title": "Units",
        "why": {
          "readBy": [],
          "words": "It changes how numbers are read and shown, and no result.",
        },
      }
    `);
  });

  test('a quantity, with the answer before it and what that did', () => {
    expect(
      screen(go(begun(), 'mm', 'none', 'Hinge', 'block', '110 x 60 x 55', 'brass')),
    ).toMatchInlineSnapshot(`
      {
        "accepted": {
          "title": "Material",
          "words": "brass",
        },
        "ask": "How heavy is Hinge before it is cut?",
        "because": null,
        "current": {
          "from": "usual",
          "values": [
            "unknown",
          ],
          "words": "worked out from size and material, as if it were solid",
        },
        "error": null,
        "hint": "Without an answer it is worked out as a solid block or bar. Example: 0.8 kg.",
        "id": "mass",
        "input": {
          "bare": "kg",
          "kind": "quantity",
          "names": null,
          "units": [
            "kg",
            "g",
            "t",
            "lb",
          ],
        },
        "kind": "question",
        "notSure": "worked out from size and material, as if it were solid",
        "part": "Hinge",
        "progress": {
          "needed": null,
          "number": 7,
          "of": 65,
          "open": 59,
        },
        "said": null,
        "section": {
          "id": "parts",
          "title": "Shape and work",
        },
        "title": "Mass",
        "why": {
          "readBy": [
            "payload",
            "tilt-moment",
            "brake-rotary",
            "brake-tilt",
            "inertia",
            "table-load",
          ],
          "words": "Tables have a limit for what they carry, and a lower one when they are tilted.",
        },
      }
    `);
  });

  test('a choice of several that was refused', () => {
    const { input, error, current } = {
      current: null,
      input: null,
      ...screen(go(begun(), 'mm', 'none', ...blockReplies('Hinge').slice(0, 5), 'bottom')),
    };
    expect({ input, error, current }).toMatchInlineSnapshot(`
      {
        "current": null,
        "error": {
          "typed": "bottom",
          "why": ""bottom" is none of them: type a number from 1 to 5, or a word such as top, sides, around, ..., or "not sure".",
        },
        "input": {
          "kind": "list",
          "options": [
            {
              "about": "straight down",
              "label": "top",
              "value": "top",
            },
            {
              "about": "level, into the faces around it",
              "label": "sides",
              "value": "sides",
            },
            {
              "about": "anywhere on the way round, like a shaft held in a chuck",
              "label": "around",
              "value": "around",
            },
            {
              "about": "between top and side, at an angle",
              "label": "slant",
              "value": "slant",
            },
            {
              "about": "from below level, leaning past the side",
              "label": "undercut",
              "value": "undercut",
            },
          ],
        },
      }
    `);
  });

  test('the list of parts', () => {
    expect(screen(go(begun(), 'inch', 'none', ...blockReplies('Hinge')))).toMatchInlineSnapshot(`
      {
        "accepted": {
          "title": "Handling minutes",
          "words": "3 min",
        },
        "actions": [
          {
            "about": "all parts are in",
            "label": "go on",
            "value": "go on",
          },
          {
            "about": "another part",
            "label": "add",
            "value": "add",
          },
          {
            "about": "a part like one that is there, such as: copy 1",
            "label": "copy",
            "value": "copy",
          },
          {
            "about": "change answers of a part: edit 1",
            "label": "edit",
            "value": "edit",
          },
          {
            "about": "give a part another name: rename 1",
            "label": "rename",
            "value": "rename",
          },
          {
            "about": "take a part out: remove 1",
            "label": "remove",
            "value": "remove",
          },
        ],
        "error": null,
        "kind": "parts",
        "parts": [
          {
            "name": "Hinge",
            "open": 0,
            "summary": "block, 90 x 60 x 55 in (2286 x 1524 x 1397 mm), wrought aluminum, top, sides",
          },
        ],
        "said": null,
      }
    `);
  });

  test('some lines of the review', () => {
    const now = screen(go(oneBlock(), { type: 'find', text: 'tolerance' }, 'not sure'));
    const lines = now.kind === 'review' ? now.lines : [];
    const titles = ['Size', 'Mass', 'Tolerance', 'Budget'];
    expect(lines.filter(({ title }) => titles.includes(title))).toMatchInlineSnapshot(`
      [
        {
          "number": 5,
          "objection": null,
          "part": "Lock gate hinge",
          "readBy": [
            "swing",
            "faceplate",
            "tilt-swing",
            "travel-x",
            "travel-y",
            "reach-high",
            "index-clear",
            "payload",
          ],
          "section": "parts",
          "state": "typed",
          "taken": null,
          "title": "Size",
          "words": "90 x 60 x 55 mm",
        },
        {
          "number": 7,
          "objection": null,
          "part": "Lock gate hinge",
          "readBy": [
            "payload",
            "tilt-moment",
            "brake-rotary",
            "brake-tilt",
            "inertia",
            "table-load",
          ],
          "section": "parts",
          "state": "usual",
          "taken": null,
          "title": "Mass",
          "words": "worked out from size and material, as if it were solid",
        },
        {
          "number": 14,
          "objection": null,
          "part": "Lock gate hinge",
          "readBy": [
            "index-accuracy",
          ],
          "section": "parts",
          "state": "not sure",
          "taken": null,
          "title": "Tolerance",
          "words": "anything from 0.005 to 0.5 mm",
        },
        {
          "number": 58,
          "objection": null,
          "part": null,
          "readBy": [
            "budget",
            "price",
          ],
          "section": "money",
          "state": "typed",
          "taken": null,
          "title": "Budget",
          "words": "180 000 EUR",
        },
      ]
    `);
  });
});
