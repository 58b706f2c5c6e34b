(test cuts in cured-epoxy: cured-epoxy 2026-11-25 e226)
(36 cuts, blank 240 x 120 x 18 mm, Z zero on its top)
(X and Y zero: the blank's lower left corner is at X0 Y0)
G21 G90 G94 G17
G54
G40 G49 G80
(before the start: spindle off, wait until it stands still)
(router unplugged, put in tool 1, eighth down-cut, set Z zero)
(on the blank's top, dial 2)
(hands clear, plugged in, spindle on, then press start)
T1
G0 Z25.0
M3 S12500
(cut 1: F1500 dial 2 ramp Z-1.2)
G0 X6.6 Y6.6
G0 Z5.0
G0 Z1.0
G1 Z0.0 F237.0
G1 X18.049 Z-0.6 F1500.0
G1 X6.6 Z-1.2
G1 X18.1
G1 X36.1
G3 X42.1 Y8.6 I0.0 J10.0
G2 X48.1 Y10.6 I6.0 J-8.0
G1 X53.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 1)
(MSG, hands clear, spindle on, then press start)
M0
(cut 2: F900 dial 2 ramp Z-1.2)
G0 X59.6 Y6.6
G0 Z5.0
G0 Z1.0
G1 Z0.0 F180.0
G1 X71.049 Z-0.6 F900.0
G1 X59.6 Z-1.2
G1 X71.1
G1 X89.1
G3 X95.1 Y8.6 I0.0 J10.0
G2 X101.1 Y10.6 I6.0 J-8.0
G1 X106.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 2, set the dial to 3)
(MSG, hands clear, spindle on, then press start)
M0
M3 S16000
(cut 3: F1620 dial 3 ramp Z-1.2)
G0 X112.6 Y6.6
G0 Z5.0
G0 Z1.0
G1 Z0.0 F237.0
G1 X124.049 Z-0.6 F1620.0
G1 X112.6 Z-1.2
G1 X124.1
G1 X142.1
G3 X148.1 Y8.6 I0.0 J10.0
G2 X154.1 Y10.6 I6.0 J-8.0
G1 X159.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 3)
(MSG, hands clear, spindle on, then press start)
M0
(cut 4: F2500 dial 3 ramp Z-1.2)
G0 X165.6 Y6.6
G0 Z5.0
G0 Z1.0
G1 Z0.0 F237.0
G1 X177.049 Z-0.6 F2500.0
G1 X165.6 Z-1.2
G1 X177.1
G1 X195.1
G3 X201.1 Y8.6 I0.0 J10.0
G2 X207.1 Y10.6 I6.0 J-8.0
G1 X212.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 4)
(MSG, hands clear, spindle on, then press start)
M0
(cut 5: F1620 dial 3 ramp Z-1.2)
G0 X6.6 Y17.1
G0 Z5.0
G0 Z1.0
G1 Z0.0 F237.0
G1 X18.049 Z-0.6 F1620.0
G1 X6.6 Z-1.2
G1 X18.1
G1 X36.1
G3 X42.1 Y19.1 I0.0 J10.0
G2 X48.1 Y21.1 I6.0 J-8.0
G1 X53.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 5, set the dial to 1)
(MSG, hands clear, spindle on, then press start)
M0
M3 S9500
(cut 6: F690 dial 1 ramp Z-1.2)
G0 X59.6 Y17.1
G0 Z5.0
G0 Z1.0
G1 Z0.0 F138.0
G1 X71.049 Z-0.6 F690.0
G1 X59.6 Z-1.2
G1 X71.1
G1 X89.1
G3 X95.1 Y19.1 I0.0 J10.0
G2 X101.1 Y21.1 I6.0 J-8.0
G1 X106.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 6)
(MSG, hands clear, spindle on, then press start)
M0
(cut 7: F1160 dial 1 ramp Z-1.2)
G0 X112.6 Y17.1
G0 Z5.0
G0 Z1.0
G1 Z0.0 F232.0
G1 X124.049 Z-0.6 F1160.0
G1 X112.6 Z-1.2
G1 X124.1
G1 X142.1
G3 X148.1 Y19.1 I0.0 J10.0
G2 X154.1 Y21.1 I6.0 J-8.0
G1 X159.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 7)
(MSG, hands clear, spindle on, then press start)
M0
(cut 8: F1160 dial 1 ramp Z-1.2)
G0 X165.6 Y17.1
G0 Z5.0
G0 Z1.0
G1 Z0.0 F232.0
G1 X177.049 Z-0.6 F1160.0
G1 X165.6 Z-1.2
G1 X177.1
G1 X195.1
G3 X201.1 Y19.1 I0.0 J10.0
G2 X207.1 Y21.1 I6.0 J-8.0
G1 X212.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 8)
(MSG, hands clear, spindle on, then press start)
M0
(cut 9: F410 dial 1 straight down Z-1.2)
G0 X6.6 Y27.6
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F82.0
G1 X18.1 F410.0
G1 X36.1
G3 X42.1 Y29.6 I0.0 J10.0
G2 X48.1 Y31.6 I6.0 J-8.0
G1 X53.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 9)
(MSG, hands clear, spindle on, then press start)
M0
(cut 10: F1940 dial 1 straight down Z-1.2)
G0 X59.6 Y27.6
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F237.0
G1 X71.1 F1940.0
G1 X89.1
G3 X95.1 Y29.6 I0.0 J10.0
G2 X101.1 Y31.6 I6.0 J-8.0
G1 X106.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 10)
(MSG, hands clear, spindle on, then press start)
M0
(cut 11: F690 dial 1 straight down Z-1.2)
G0 X112.6 Y27.6
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F138.0
G1 X124.1 F690.0
G1 X142.1
G3 X148.1 Y29.6 I0.0 J10.0
G2 X154.1 Y31.6 I6.0 J-8.0
G1 X159.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 11)
(MSG, hands clear, spindle on, then press start)
M0
(cut 12: F1940 dial 1 ramp Z-1.2)
G0 X165.6 Y27.6
G0 Z5.0
G0 Z1.0
G1 Z0.0 F237.0
G1 X177.049 Z-0.6 F1940.0
G1 X165.6 Z-1.2
G1 X177.1
G1 X195.1
G3 X201.1 Y29.6 I0.0 J10.0
G2 X207.1 Y31.6 I6.0 J-8.0
G1 X212.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 12)
(MSG, hands clear, spindle on, then press start)
M0
(cut 13: F1160 dial 1 straight down Z-1.2)
G0 X6.6 Y38.1
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F232.0
G1 X18.1 F1160.0
G1 X36.1
G3 X42.1 Y40.1 I0.0 J10.0
G2 X48.1 Y42.1 I6.0 J-8.0
G1 X53.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 13)
(MSG, hands clear, spindle on, then press start)
M0
(cut 14: F410 dial 1 ramp Z-1.2)
G0 X59.6 Y38.1
G0 Z5.0
G0 Z1.0
G1 Z0.0 F82.0
G1 X71.049 Z-0.6 F410.0
G1 X59.6 Z-1.2
G1 X71.1
G1 X89.1
G3 X95.1 Y40.1 I0.0 J10.0
G2 X101.1 Y42.1 I6.0 J-8.0
G1 X106.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 14)
(MSG, hands clear, spindle on, then press start)
M0
(cut 15: F1160 dial 1 straight down Z-1.2)
G0 X112.6 Y38.1
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F232.0
G1 X124.1 F1160.0
G1 X142.1
G3 X148.1 Y40.1 I0.0 J10.0
G2 X154.1 Y42.1 I6.0 J-8.0
G1 X159.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 15, set the dial to 2)
(MSG, hands clear, spindle on, then press start)
M0
M3 S12500
(cut 16: F540 dial 2 straight down Z-1.2)
G0 X165.6 Y38.1
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F108.0
G1 X177.1 F540.0
G1 X195.1
G3 X201.1 Y40.1 I0.0 J10.0
G2 X207.1 Y42.1 I6.0 J-8.0
G1 X212.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 16)
(MSG, hands clear, spindle on, then press start)
M0
(cut 17: F540 dial 2 ramp Z-1.2)
G0 X6.6 Y48.6
G0 Z5.0
G0 Z1.0
G1 Z0.0 F108.0
G1 X18.049 Z-0.6 F540.0
G1 X6.6 Z-1.2
G1 X18.1
G1 X36.1
G3 X42.1 Y50.6 I0.0 J10.0
G2 X48.1 Y52.6 I6.0 J-8.0
G1 X53.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 17)
(MSG, hands clear, spindle on, then press start)
M0
(cut 18: F2500 dial 2 ramp Z-1.2)
G0 X59.6 Y48.6
G0 Z5.0
G0 Z1.0
G1 Z0.0 F237.0
G1 X71.049 Z-0.6 F2500.0
G1 X59.6 Z-1.2
G1 X71.1
G1 X89.1
G3 X95.1 Y50.6 I0.0 J10.0
G2 X101.1 Y52.6 I6.0 J-8.0
G1 X106.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 18)
(MSG, hands clear, spindle on, then press start)
M0
(cut 19: F900 dial 2 straight down Z-1.2)
G0 X112.6 Y48.6
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F180.0
G1 X124.1 F900.0
G1 X142.1
G3 X148.1 Y50.6 I0.0 J10.0
G2 X154.1 Y52.6 I6.0 J-8.0
G1 X159.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 19)
(MSG, hands clear, spindle on, then press start)
M0
(cut 20: F1500 dial 2 straight down Z-1.2)
G0 X165.6 Y48.6
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F237.0
G1 X177.1 F1500.0
G1 X195.1
G3 X201.1 Y50.6 I0.0 J10.0
G2 X207.1 Y52.6 I6.0 J-8.0
G1 X212.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 20)
(MSG, hands clear, spindle on, then press start)
M0
(cut 21: F2500 dial 2 straight down Z-1.2)
G0 X6.6 Y59.1
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F237.0
G1 X18.1 F2500.0
G1 X36.1
G3 X42.1 Y61.1 I0.0 J10.0
G2 X48.1 Y63.1 I6.0 J-8.0
G1 X53.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 21, set the dial to 3)
(MSG, hands clear, spindle on, then press start)
M0
M3 S16000
(cut 22: F690 dial 3 straight down Z-1.2)
G0 X59.6 Y59.1
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F138.0
G1 X71.1 F690.0
G1 X89.1
G3 X95.1 Y61.1 I0.0 J10.0
G2 X101.1 Y63.1 I6.0 J-8.0
G1 X106.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 22)
(MSG, hands clear, spindle on, then press start)
M0
(cut 23: F1620 dial 3 straight down Z-1.2)
G0 X112.6 Y59.1
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F237.0
G1 X124.1 F1620.0
G1 X142.1
G3 X148.1 Y61.1 I0.0 J10.0
G2 X154.1 Y63.1 I6.0 J-8.0
G1 X159.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 23)
(MSG, hands clear, spindle on, then press start)
M0
(cut 24: F1060 dial 3 straight down Z-1.2)
G0 X165.6 Y59.1
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F212.0
G1 X177.1 F1060.0
G1 X195.1
G3 X201.1 Y61.1 I0.0 J10.0
G2 X207.1 Y63.1 I6.0 J-8.0
G1 X212.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 24)
(MSG, hands clear, spindle on, then press start)
M0
(cut 25: F2500 dial 3 straight down Z-1.2)
G0 X6.6 Y69.6
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F237.0
G1 X18.1 F2500.0
G1 X36.1
G3 X42.1 Y71.6 I0.0 J10.0
G2 X48.1 Y73.6 I6.0 J-8.0
G1 X53.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 25)
(MSG, hands clear, spindle on, then press start)
M0
(cut 26: F1060 dial 3 ramp Z-1.2)
G0 X59.6 Y69.6
G0 Z5.0
G0 Z1.0
G1 Z0.0 F212.0
G1 X71.049 Z-0.6 F1060.0
G1 X59.6 Z-1.2
G1 X71.1
G1 X89.1
G3 X95.1 Y71.6 I0.0 J10.0
G2 X101.1 Y73.6 I6.0 J-8.0
G1 X106.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 26)
(MSG, hands clear, spindle on, then press start)
M0
(cut 27: F690 dial 3 ramp Z-1.2)
G0 X112.6 Y69.6
G0 Z5.0
G0 Z1.0
G1 Z0.0 F138.0
G1 X124.049 Z-0.6 F690.0
G1 X112.6 Z-1.2
G1 X124.1
G1 X142.1
G3 X148.1 Y71.6 I0.0 J10.0
G2 X154.1 Y73.6 I6.0 J-8.0
G1 X159.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 27)
(MSG, hands clear, spindle on, then press start)
M0
(cut 28: F1620 dial 3 straight down Z-1.2)
G0 X165.6 Y69.6
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F237.0
G1 X177.1 F1620.0
G1 X195.1
G3 X201.1 Y71.6 I0.0 J10.0
G2 X207.1 Y73.6 I6.0 J-8.0
G1 X212.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 28, set the dial to 4)
(MSG, hands clear, spindle on, then press start)
M0
M3 S19500
(cut 29: F1740 dial 4 ramp Z-1.2)
G0 X6.6 Y80.1
G0 Z5.0
G0 Z1.0
G1 Z0.0 F237.0
G1 X18.049 Z-0.6 F1740.0
G1 X6.6 Z-1.2
G1 X18.1
G1 X36.1
G3 X42.1 Y82.1 I0.0 J10.0
G2 X48.1 Y84.1 I6.0 J-8.0
G1 X53.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 29)
(MSG, hands clear, spindle on, then press start)
M0
(cut 30: F2500 dial 4 straight down Z-1.2)
G0 X59.6 Y80.1
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F237.0
G1 X71.1 F2500.0
G1 X89.1
G3 X95.1 Y82.1 I0.0 J10.0
G2 X101.1 Y84.1 I6.0 J-8.0
G1 X106.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 30)
(MSG, hands clear, spindle on, then press start)
M0
(cut 31: F1210 dial 4 ramp Z-1.2)
G0 X112.6 Y80.1
G0 Z5.0
G0 Z1.0
G1 Z0.0 F237.0
G1 X124.049 Z-0.6 F1210.0
G1 X112.6 Z-1.2
G1 X124.1
G1 X142.1
G3 X148.1 Y82.1 I0.0 J10.0
G2 X154.1 Y84.1 I6.0 J-8.0
G1 X159.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 31)
(MSG, hands clear, spindle on, then press start)
M0
(cut 32: F2500 dial 4 ramp Z-1.2)
G0 X165.6 Y80.1
G0 Z5.0
G0 Z1.0
G1 Z0.0 F237.0
G1 X177.049 Z-0.6 F2500.0
G1 X165.6 Z-1.2
G1 X177.1
G1 X195.1
G3 X201.1 Y82.1 I0.0 J10.0
G2 X207.1 Y84.1 I6.0 J-8.0
G1 X212.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 32)
(MSG, hands clear, spindle on, then press start)
M0
(cut 33: F840 dial 4 straight down Z-1.2)
G0 X6.6 Y90.6
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F168.0
G1 X18.1 F840.0
G1 X36.1
G3 X42.1 Y92.6 I0.0 J10.0
G2 X48.1 Y94.6 I6.0 J-8.0
G1 X53.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 33)
(MSG, hands clear, spindle on, then press start)
M0
(cut 34: F1740 dial 4 straight down Z-1.2)
G0 X59.6 Y90.6
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F237.0
G1 X71.1 F1740.0
G1 X89.1
G3 X95.1 Y92.6 I0.0 J10.0
G2 X101.1 Y94.6 I6.0 J-8.0
G1 X106.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 34)
(MSG, hands clear, spindle on, then press start)
M0
(cut 35: F1210 dial 4 straight down Z-1.2)
G0 X112.6 Y90.6
G0 Z5.0
G0 Z1.0
G1 Z-1.2 F237.0
G1 X124.1 F1210.0
G1 X142.1
G3 X148.1 Y92.6 I0.0 J10.0
G2 X154.1 Y94.6 I6.0 J-8.0
G1 X159.1
G0 Z25.0
(MSG, spindle off, wait until it stands still)
(MSG, look at cut 35)
(MSG, hands clear, spindle on, then press start)
M0
(cut 36: F840 dial 4 ramp Z-1.2)
G0 X165.6 Y90.6
G0 Z5.0
G0 Z1.0
G1 Z0.0 F168.0
G1 X177.049 Z-0.6 F840.0
G1 X165.6 Z-1.2
G1 X177.1
G1 X195.1
G3 X201.1 Y92.6 I0.0 J10.0
G2 X207.1 Y94.6 I6.0 J-8.0
G1 X212.1
G0 Z25.0
M5
M30
