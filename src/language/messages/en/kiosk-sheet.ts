export const kioskSheet = {
  title: 'Installing the kiosk',
  lead: 'One sheet for whoever puts the kiosk up, and for whoever is called when it stops. Keep it behind the screen.',
  print: 'Print this sheet',
  parts: {
    before: {
      heading: 'Before it goes up',
      lines: [
        'A computer with a touch screen, a browser of the last two years, and a graphics chip that draws WebGL. Without one it works too, with slower pictures.',
        'A network for the first start. After the self-test says Offline: good, the network may be unplugged; updates come when it is there.',
        'The address begins with https://, or with http://localhost where the computer serves the files itself. Only then can the browser keep a copy.',
        'Open the address, then the setup page, and work through it from the top: true size first.',
      ],
    },
    linux: {
      heading: 'Start-up on Linux',
      lines: [
        'An account of its own with no password to type and no other rights, which logs in by itself.',
        'Its session starts one program: the browser, in full-screen kiosk mode, at the address with #/kiosk at its end. A service restarts it when it ends.',
        'Off: screen saver, notices, automatic restarts by day, touch gestures of the desktop, key combinations, the offer to restore pages after a crash.',
        'Sleep of the display after 15 minutes: the page holds the screen on during opening hours and lets it go after them.',
      ],
    },
    windows: {
      heading: 'Start-up on Windows',
      lines: [
        'A separate local account without administrator rights, set in the system settings to run one program only: the browser in full-screen kiosk mode at the same address.',
        'Automatic sign-in for that account; updates and restarts outside opening hours; edge swipes, notices and the touch keyboard off.',
        'In the power plan: computer never sleeps, display after 15 minutes.',
        'Allow the site to store data and to play sound. Forbid other addresses, downloads and printing in the browser’s policy.',
      ],
    },
    launcher: {
      heading: 'The heartbeat',
      lines: [
        'Every 10 seconds the page writes its title anew: {beat}. The same text stands in the attribute data-heartbeat of the document.',
        'The word before the time is attract, visit, setup, or resting while it waits to load itself anew.',
        'A watching program reads the title of the window, with no network. If it has not changed for 60 seconds: end the browser and start it again. If that fails three times: restart the computer.',
      ],
    },
    reach: {
      heading: 'Height and reach',
      lines: [
        'All keys lie in a band along the lower edge of the screen. Hang it so that the whole band lies inside the reach of every visitor: between 20 and 36 in where small children come.',
        'Leave a level floor of 30 by 48 in before it, straight on or from the side, and knee room 27 in high under a desk.',
      ],
      drawing: 'The kiosk seen from the front with the heights from the floor that visitors reach.',
      keys: 'keys',
      bars: { adult: 'adults', nine: '9–12', five: '5–8', three: '3–4' },
      floor: 'floor',
      table: 'Heights from the floor, 2010 ADA Standards',
      who: 'Who',
      low: 'From',
      high: 'To',
      source: 'Clause',
      rows: {
        adult: 'Adults, forward or sideways',
        deep: 'Over a shelf 20 to 25 in deep',
        nine: 'Children of 9 to 12',
        five: 'Children of 5 to 8',
        three: 'Children of 3 and 4',
      },
      memory: 'from memory',
      inches: '{n} in',
      mm: 'mm',
      span: '{low} – {high}',
    },
    sound: {
      heading: 'Sound',
      lines: [
        'Where a visitor stands, the speaker has to reach at least 65 dB(A) (Section 508, 402.3.2; EN 301 549, 5.1.3.12). Play the tone of the setup page, hold the meter at the height of a head, and set the system’s loudness.',
        'In a loud room that is too little: 20 dB above the room where the room is above 45 dB (an older rule of 2000).',
        'After each visit the loudness falls back to the setting.',
        'Screens are read aloud by voices of the device. There are no recorded clips in this version: where the device has no voice of a language, nothing is read aloud in it.',
      ],
    },
    power: {
      heading: 'Power',
      lines: [
        'In the firmware: start when power returns. Then a switched outlet or a timer may turn everything off at night; shut the computer down first.',
        'A surge protector, no loose cable in reach, and air round the vents.',
      ],
    },
    cleaning: {
      heading: 'Cleaning',
      lines: [
        'Daily: a soft lint-free cloth, barely damp with water, on a dark screen. Wet the cloth, never the glass.',
        'What disinfects has to be allowed by the maker of the screen; no ammonia, no powder, no paper. Let it dry before the doors open. Common practice.',
      ],
    },
    trouble: {
      heading: 'When it fails',
      seen: 'What is seen',
      does: 'What to do',
      rows: [
        {
          seen: 'The quilt alone, quite still',
          does: 'It met an error and loads itself anew after 5, 30, then 120 seconds. If it is still there after ten minutes, restart the computer.',
        },
        {
          seen: 'The pictures stand still, all else works',
          does: 'The graphics failed several times in a row. The next nightly start tries again; a restart of the computer does it now.',
        },
        {
          seen: 'A blank page, or the browser’s own message',
          does: 'No copy on the device and no network. Plug the network in and start the browser again.',
        },
        {
          seen: 'It begins like new, with other sizes',
          does: 'The browser cleared its storage. Open the settings file on the setup page, then look at Storage in the self-test.',
        },
        {
          seen: 'Presses land beside the finger',
          does: 'Calibrate the touch screen in the system’s settings, and measure the bar on the setup page again.',
        },
        {
          seen: 'Keys too large or too small',
          does: 'The zoom of the browser or of the display was changed. Set both back to 100 percent, or measure the bar again.',
        },
        {
          seen: 'Nothing is read aloud',
          does: 'Look at Voices in the self-test, the loudness of the system, and the cable of the speaker.',
        },
      ],
    },
    setup: {
      heading: 'To the setup page',
      lines: [
        'Hold the top left corner of the screen for five seconds, let go, then tap the corners within fifteen seconds: top right, bottom right, bottom left, top left.',
        'Or type the address with #/kiosk/setup at its end. Left untouched for ten minutes it goes back to the kiosk.',
      ],
    },
    weekly: {
      heading: 'Each week',
      lines: [
        'Self-test: read the five lines. Counts: save the table and start anew. Save the settings once after every change.',
        'Counts are numbers alone: visits, languages, stations and seconds. Nothing about a person is kept, and nothing leaves the device.',
        'A new version comes by itself with the network and is taken while nobody is there. Each night at {time} the page is loaded anew.',
      ],
    },
  },
  here: {
    heading: 'This kiosk',
    size: 'Pixel: {mm} mm',
    hours: 'Open {from} to {to}',
    phone: 'Phones: {address}',
    noPhone: 'Phones: no code',
    blanks: ['Address:', 'Put up on:', 'Ask for:', 'Phone:'],
  },
};
