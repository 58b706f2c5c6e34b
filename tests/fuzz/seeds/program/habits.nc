g21 g90
; habits, invented
(one (nested) two)
G1X1,5Y 1 0.	F 300*71// G0 Z5
% G1 X1
/2 G1 X3
G1 X+.5 Y-.25;end
G70
G71
T3
(unclosed
M3 S#1
G1 X1.2.3
N5G01X5Y5Z5F100;
