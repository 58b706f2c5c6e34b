(MOORING PLATE, HDPE 12 MM: FOUR SLOTS BY ONE SUBPROGRAM)
(T1 6 MM THREE FLUTES)
G21 G90 G94 G17 G54
#100 = 5            (HEIGHT OF TRAVEL)
#101 = 40           (FROM SLOT TO SLOT)
#102 = 1900         (FEED)
T1 M6
S12000 M3
G4 P4
G43 H1
G0 Z[#100 + 10]

O100 sub            (ONE SLOT: #1 X, #2 Y, #3 LENGTH, #4 DEPTH)
G0 X#1 Y#2
G0 Z#100
#5 = 0              (DEPTH SO FAR)
G1 Z0 F600
O110 while [#5 LT #4]
#5 = [#5 + 1.5]
O120 if [#5 GT #4]
#5 = #4
O120 endif
G1 Y[#2 + #3] Z-#5 F600
Y#2 F#102
O110 endwhile
G0 Z#100
O100 endsub

#103 = 0
O200 repeat [4]
O100 call [40 + #103 * #101] [15] [30] [6]
#103 = [#103 + 1]
O200 endrepeat
G0 Z[#100 + 10]
M5
M30
