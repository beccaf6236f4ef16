package else_chain.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: else-chain/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	c(1) == 1
	f := {"id": "else-chain/a-rule", "subject": s.id}
}

c(x) := 0 if {
	x == 0
} else := 1 if {
	x == 1
} else := 2 if {
	x == 2
} else := 3 if {
	x == 3
} else := 4 if {
	x == 4
} else := 5 if {
	x == 5
} else := 6 if {
	x == 6
} else := 7 if {
	x == 7
} else := 8 if {
	x == 8
} else := 9 if {
	x == 9
} else := 10 if {
	x == 10
} else := 11 if {
	x == 11
} else := 12 if {
	x == 12
} else := 13 if {
	x == 13
} else := 14 if {
	x == 14
} else := 15 if {
	x == 15
} else := 16 if {
	x == 16
} else := 17 if {
	x == 17
} else := 18 if {
	x == 18
} else := 19 if {
	x == 19
} else := 20 if {
	x == 20
} else := 21 if {
	x == 21
} else := 22 if {
	x == 22
} else := 23 if {
	x == 23
} else := 24 if {
	x == 24
} else := 25 if {
	x == 25
} else := 26 if {
	x == 26
} else := 27 if {
	x == 27
} else := 28 if {
	x == 28
} else := 29 if {
	x == 29
} else := 30 if {
	x == 30
} else := 31 if {
	x == 31
} else := 32 if {
	x == 32
} else := 33 if {
	x == 33
} else := 34 if {
	x == 34
} else := 35 if {
	x == 35
} else := 36 if {
	x == 36
} else := 37 if {
	x == 37
} else := 38 if {
	x == 38
} else := 39 if {
	x == 39
} else := 40 if {
	x == 40
} else := 41 if {
	x == 41
} else := 42 if {
	x == 42
} else := 43 if {
	x == 43
} else := 44 if {
	x == 44
} else := 45 if {
	x == 45
} else := 46 if {
	x == 46
} else := 47 if {
	x == 47
} else := 48 if {
	x == 48
} else := 49 if {
	x == 49
} else := 50 if {
	x == 50
} else := 51 if {
	x == 51
} else := 52 if {
	x == 52
} else := 53 if {
	x == 53
} else := 54 if {
	x == 54
} else := 55 if {
	x == 55
} else := 56 if {
	x == 56
} else := 57 if {
	x == 57
} else := 58 if {
	x == 58
} else := 59 if {
	x == 59
} else := 60 if {
	x == 60
} else := 61 if {
	x == 61
} else := 62 if {
	x == 62
} else := 63 if {
	x == 63
} else := 64 if {
	x == 64
} else := 65 if {
	x == 65
} else := 66 if {
	x == 66
} else := 67 if {
	x == 67
} else := 68 if {
	x == 68
} else := 69 if {
	x == 69
} else := 70 if {
	x == 70
} else := 71 if {
	x == 71
} else := 72 if {
	x == 72
} else := 73 if {
	x == 73
} else := 74 if {
	x == 74
} else := 75 if {
	x == 75
} else := 76 if {
	x == 76
} else := 77 if {
	x == 77
} else := 78 if {
	x == 78
} else := 79 if {
	x == 79
} else := 80 if {
	x == 80
} else := 81 if {
	x == 81
} else := 82 if {
	x == 82
} else := 83 if {
	x == 83
} else := 84 if {
	x == 84
} else := 85 if {
	x == 85
} else := 86 if {
	x == 86
} else := 87 if {
	x == 87
} else := 88 if {
	x == 88
} else := 89 if {
	x == 89
} else := 90 if {
	x == 90
} else := 91 if {
	x == 91
} else := 92 if {
	x == 92
} else := 93 if {
	x == 93
} else := 94 if {
	x == 94
} else := 95 if {
	x == 95
} else := 96 if {
	x == 96
} else := 97 if {
	x == 97
} else := 98 if {
	x == 98
} else := 99 if {
	x == 99
} else := 100 if {
	x == 100
} else := 101 if {
	x == 101
} else := 102 if {
	x == 102
} else := 103 if {
	x == 103
} else := 104 if {
	x == 104
} else := 105 if {
	x == 105
} else := 106 if {
	x == 106
} else := 107 if {
	x == 107
} else := 108 if {
	x == 108
} else := 109 if {
	x == 109
} else := 110 if {
	x == 110
} else := 111 if {
	x == 111
} else := 112 if {
	x == 112
} else := 113 if {
	x == 113
} else := 114 if {
	x == 114
} else := 115 if {
	x == 115
} else := 116 if {
	x == 116
} else := 117 if {
	x == 117
} else := 118 if {
	x == 118
} else := 119 if {
	x == 119
} else := 120 if {
	x == 120
} else := 121 if {
	x == 121
} else := 122 if {
	x == 122
} else := 123 if {
	x == 123
} else := 124 if {
	x == 124
} else := 125 if {
	x == 125
} else := 126 if {
	x == 126
} else := 127 if {
	x == 127
} else := 128 if {
	x == 128
} else := 129 if {
	x == 129
} else := 130 if {
	x == 130
} else := 131 if {
	x == 131
} else := 132 if {
	x == 132
} else := 133 if {
	x == 133
} else := 134 if {
	x == 134
} else := 135 if {
	x == 135
} else := 136 if {
	x == 136
} else := 137 if {
	x == 137
} else := 138 if {
	x == 138
} else := 139 if {
	x == 139
} else := 140 if {
	x == 140
} else := 141 if {
	x == 141
} else := 142 if {
	x == 142
} else := 143 if {
	x == 143
} else := 144 if {
	x == 144
} else := 145 if {
	x == 145
} else := 146 if {
	x == 146
} else := 147 if {
	x == 147
} else := 148 if {
	x == 148
} else := 149 if {
	x == 149
} else := 150 if {
	x == 150
} else := 151 if {
	x == 151
} else := 152 if {
	x == 152
} else := 153 if {
	x == 153
} else := 154 if {
	x == 154
} else := 155 if {
	x == 155
} else := 156 if {
	x == 156
} else := 157 if {
	x == 157
} else := 158 if {
	x == 158
} else := 159 if {
	x == 159
} else := 160 if {
	x == 160
} else := 161 if {
	x == 161
} else := 162 if {
	x == 162
} else := 163 if {
	x == 163
} else := 164 if {
	x == 164
} else := 165 if {
	x == 165
} else := 166 if {
	x == 166
} else := 167 if {
	x == 167
} else := 168 if {
	x == 168
} else := 169 if {
	x == 169
} else := 170 if {
	x == 170
} else := 171 if {
	x == 171
} else := 172 if {
	x == 172
} else := 173 if {
	x == 173
} else := 174 if {
	x == 174
} else := 175 if {
	x == 175
} else := 176 if {
	x == 176
} else := 177 if {
	x == 177
} else := 178 if {
	x == 178
} else := 179 if {
	x == 179
} else := 180 if {
	x == 180
} else := 181 if {
	x == 181
} else := 182 if {
	x == 182
} else := 183 if {
	x == 183
} else := 184 if {
	x == 184
} else := 185 if {
	x == 185
} else := 186 if {
	x == 186
} else := 187 if {
	x == 187
} else := 188 if {
	x == 188
} else := 189 if {
	x == 189
} else := 190 if {
	x == 190
} else := 191 if {
	x == 191
} else := 192 if {
	x == 192
} else := 193 if {
	x == 193
} else := 194 if {
	x == 194
} else := 195 if {
	x == 195
} else := 196 if {
	x == 196
} else := 197 if {
	x == 197
} else := 198 if {
	x == 198
} else := 199 if {
	x == 199
} else := 200 if {
	x == 200
} else := 201 if {
	x == 201
} else := 202 if {
	x == 202
} else := 203 if {
	x == 203
} else := 204 if {
	x == 204
} else := 205 if {
	x == 205
} else := 206 if {
	x == 206
} else := 207 if {
	x == 207
} else := 208 if {
	x == 208
} else := 209 if {
	x == 209
} else := 210 if {
	x == 210
} else := 211 if {
	x == 211
} else := 212 if {
	x == 212
} else := 213 if {
	x == 213
} else := 214 if {
	x == 214
} else := 215 if {
	x == 215
} else := 216 if {
	x == 216
} else := 217 if {
	x == 217
} else := 218 if {
	x == 218
} else := 219 if {
	x == 219
} else := 220 if {
	x == 220
} else := 221 if {
	x == 221
} else := 222 if {
	x == 222
} else := 223 if {
	x == 223
} else := 224 if {
	x == 224
} else := 225 if {
	x == 225
} else := 226 if {
	x == 226
} else := 227 if {
	x == 227
} else := 228 if {
	x == 228
} else := 229 if {
	x == 229
} else := 230 if {
	x == 230
} else := 231 if {
	x == 231
} else := 232 if {
	x == 232
} else := 233 if {
	x == 233
} else := 234 if {
	x == 234
} else := 235 if {
	x == 235
} else := 236 if {
	x == 236
} else := 237 if {
	x == 237
} else := 238 if {
	x == 238
} else := 239 if {
	x == 239
} else := 240 if {
	x == 240
} else := 241 if {
	x == 241
} else := 242 if {
	x == 242
} else := 243 if {
	x == 243
} else := 244 if {
	x == 244
} else := 245 if {
	x == 245
} else := 246 if {
	x == 246
} else := 247 if {
	x == 247
} else := 248 if {
	x == 248
} else := 249 if {
	x == 249
} else := 250 if {
	x == 250
} else := 251 if {
	x == 251
} else := 252 if {
	x == 252
} else := 253 if {
	x == 253
} else := 254 if {
	x == 254
} else := 255 if {
	x == 255
} else := 256 if {
	x == 256
} else := 257 if {
	x == 257
} else := 258 if {
	x == 258
} else := 259 if {
	x == 259
} else := 260 if {
	x == 260
} else := 261 if {
	x == 261
} else := 262 if {
	x == 262
} else := 263 if {
	x == 263
} else := 264 if {
	x == 264
} else := 265 if {
	x == 265
} else := 266 if {
	x == 266
} else := 267 if {
	x == 267
} else := 268 if {
	x == 268
} else := 269 if {
	x == 269
} else := 270 if {
	x == 270
} else := 271 if {
	x == 271
} else := 272 if {
	x == 272
} else := 273 if {
	x == 273
} else := 274 if {
	x == 274
} else := 275 if {
	x == 275
} else := 276 if {
	x == 276
} else := 277 if {
	x == 277
} else := 278 if {
	x == 278
} else := 279 if {
	x == 279
} else := 280 if {
	x == 280
} else := 281 if {
	x == 281
} else := 282 if {
	x == 282
} else := 283 if {
	x == 283
} else := 284 if {
	x == 284
} else := 285 if {
	x == 285
} else := 286 if {
	x == 286
} else := 287 if {
	x == 287
} else := 288 if {
	x == 288
} else := 289 if {
	x == 289
} else := 290 if {
	x == 290
} else := 291 if {
	x == 291
} else := 292 if {
	x == 292
} else := 293 if {
	x == 293
} else := 294 if {
	x == 294
} else := 295 if {
	x == 295
} else := 296 if {
	x == 296
} else := 297 if {
	x == 297
} else := 298 if {
	x == 298
} else := 299 if {
	x == 299
} else := 300 if {
	x == 300
} else := 301 if {
	x == 301
} else := 302 if {
	x == 302
} else := 303 if {
	x == 303
} else := 304 if {
	x == 304
} else := 305 if {
	x == 305
} else := 306 if {
	x == 306
} else := 307 if {
	x == 307
} else := 308 if {
	x == 308
} else := 309 if {
	x == 309
} else := 310 if {
	x == 310
} else := 311 if {
	x == 311
} else := 312 if {
	x == 312
} else := 313 if {
	x == 313
} else := 314 if {
	x == 314
} else := 315 if {
	x == 315
} else := 316 if {
	x == 316
} else := 317 if {
	x == 317
} else := 318 if {
	x == 318
} else := 319 if {
	x == 319
} else := 320 if {
	x == 320
} else := 321 if {
	x == 321
} else := 322 if {
	x == 322
} else := 323 if {
	x == 323
} else := 324 if {
	x == 324
} else := 325 if {
	x == 325
} else := 326 if {
	x == 326
} else := 327 if {
	x == 327
} else := 328 if {
	x == 328
} else := 329 if {
	x == 329
} else := 330 if {
	x == 330
} else := 331 if {
	x == 331
} else := 332 if {
	x == 332
} else := 333 if {
	x == 333
} else := 334 if {
	x == 334
} else := 335 if {
	x == 335
} else := 336 if {
	x == 336
} else := 337 if {
	x == 337
} else := 338 if {
	x == 338
} else := 339 if {
	x == 339
} else := 340 if {
	x == 340
} else := 341 if {
	x == 341
} else := 342 if {
	x == 342
} else := 343 if {
	x == 343
} else := 344 if {
	x == 344
} else := 345 if {
	x == 345
} else := 346 if {
	x == 346
} else := 347 if {
	x == 347
} else := 348 if {
	x == 348
} else := 349 if {
	x == 349
} else := 350 if {
	x == 350
} else := 351 if {
	x == 351
} else := 352 if {
	x == 352
} else := 353 if {
	x == 353
} else := 354 if {
	x == 354
} else := 355 if {
	x == 355
} else := 356 if {
	x == 356
} else := 357 if {
	x == 357
} else := 358 if {
	x == 358
} else := 359 if {
	x == 359
} else := 360 if {
	x == 360
} else := 361 if {
	x == 361
} else := 362 if {
	x == 362
} else := 363 if {
	x == 363
} else := 364 if {
	x == 364
} else := 365 if {
	x == 365
} else := 366 if {
	x == 366
} else := 367 if {
	x == 367
} else := 368 if {
	x == 368
} else := 369 if {
	x == 369
} else := 370 if {
	x == 370
} else := 371 if {
	x == 371
} else := 372 if {
	x == 372
} else := 373 if {
	x == 373
} else := 374 if {
	x == 374
} else := 375 if {
	x == 375
} else := 376 if {
	x == 376
} else := 377 if {
	x == 377
} else := 378 if {
	x == 378
} else := 379 if {
	x == 379
} else := 380 if {
	x == 380
} else := 381 if {
	x == 381
} else := 382 if {
	x == 382
} else := 383 if {
	x == 383
} else := 384 if {
	x == 384
} else := 385 if {
	x == 385
} else := 386 if {
	x == 386
} else := 387 if {
	x == 387
} else := 388 if {
	x == 388
} else := 389 if {
	x == 389
} else := 390 if {
	x == 390
} else := 391 if {
	x == 391
} else := 392 if {
	x == 392
} else := 393 if {
	x == 393
} else := 394 if {
	x == 394
} else := 395 if {
	x == 395
} else := 396 if {
	x == 396
} else := 397 if {
	x == 397
} else := 398 if {
	x == 398
} else := 399 if {
	x == 399
} else := 400 if {
	x == 400
} else := 401 if {
	x == 401
} else := 402 if {
	x == 402
} else := 403 if {
	x == 403
} else := 404 if {
	x == 404
} else := 405 if {
	x == 405
} else := 406 if {
	x == 406
} else := 407 if {
	x == 407
} else := 408 if {
	x == 408
} else := 409 if {
	x == 409
} else := 410 if {
	x == 410
} else := 411 if {
	x == 411
} else := 412 if {
	x == 412
} else := 413 if {
	x == 413
} else := 414 if {
	x == 414
} else := 415 if {
	x == 415
} else := 416 if {
	x == 416
} else := 417 if {
	x == 417
} else := 418 if {
	x == 418
} else := 419 if {
	x == 419
} else := 420 if {
	x == 420
} else := 421 if {
	x == 421
} else := 422 if {
	x == 422
} else := 423 if {
	x == 423
} else := 424 if {
	x == 424
} else := 425 if {
	x == 425
} else := 426 if {
	x == 426
} else := 427 if {
	x == 427
} else := 428 if {
	x == 428
} else := 429 if {
	x == 429
} else := 430 if {
	x == 430
} else := 431 if {
	x == 431
} else := 432 if {
	x == 432
} else := 433 if {
	x == 433
} else := 434 if {
	x == 434
} else := 435 if {
	x == 435
} else := 436 if {
	x == 436
} else := 437 if {
	x == 437
} else := 438 if {
	x == 438
} else := 439 if {
	x == 439
} else := 440 if {
	x == 440
} else := 441 if {
	x == 441
} else := 442 if {
	x == 442
} else := 443 if {
	x == 443
} else := 444 if {
	x == 444
} else := 445 if {
	x == 445
} else := 446 if {
	x == 446
} else := 447 if {
	x == 447
} else := 448 if {
	x == 448
} else := 449 if {
	x == 449
} else := 450 if {
	x == 450
} else := 451 if {
	x == 451
} else := 452 if {
	x == 452
} else := 453 if {
	x == 453
} else := 454 if {
	x == 454
} else := 455 if {
	x == 455
} else := 456 if {
	x == 456
} else := 457 if {
	x == 457
} else := 458 if {
	x == 458
} else := 459 if {
	x == 459
} else := 460 if {
	x == 460
} else := 461 if {
	x == 461
} else := 462 if {
	x == 462
} else := 463 if {
	x == 463
} else := 464 if {
	x == 464
} else := 465 if {
	x == 465
} else := 466 if {
	x == 466
} else := 467 if {
	x == 467
} else := 468 if {
	x == 468
} else := 469 if {
	x == 469
} else := 470 if {
	x == 470
} else := 471 if {
	x == 471
} else := 472 if {
	x == 472
} else := 473 if {
	x == 473
} else := 474 if {
	x == 474
} else := 475 if {
	x == 475
} else := 476 if {
	x == 476
} else := 477 if {
	x == 477
} else := 478 if {
	x == 478
} else := 479 if {
	x == 479
} else := 480 if {
	x == 480
} else := 481 if {
	x == 481
} else := 482 if {
	x == 482
} else := 483 if {
	x == 483
} else := 484 if {
	x == 484
} else := 485 if {
	x == 485
} else := 486 if {
	x == 486
} else := 487 if {
	x == 487
} else := 488 if {
	x == 488
} else := 489 if {
	x == 489
} else := 490 if {
	x == 490
} else := 491 if {
	x == 491
} else := 492 if {
	x == 492
} else := 493 if {
	x == 493
} else := 494 if {
	x == 494
} else := 495 if {
	x == 495
} else := 496 if {
	x == 496
} else := 497 if {
	x == 497
} else := 498 if {
	x == 498
} else := 499 if {
	x == 499
} else := 500 if {
	x == 500
} else := 501 if {
	x == 501
} else := 502 if {
	x == 502
} else := 503 if {
	x == 503
} else := 504 if {
	x == 504
} else := 505 if {
	x == 505
} else := 506 if {
	x == 506
} else := 507 if {
	x == 507
} else := 508 if {
	x == 508
} else := 509 if {
	x == 509
} else := 510 if {
	x == 510
} else := 511 if {
	x == 511
} else := 512 if {
	x == 512
} else := 513 if {
	x == 513
} else := 514 if {
	x == 514
} else := 515 if {
	x == 515
} else := 516 if {
	x == 516
} else := 517 if {
	x == 517
} else := 518 if {
	x == 518
} else := 519 if {
	x == 519
} else := 520 if {
	x == 520
} else := 521 if {
	x == 521
} else := 522 if {
	x == 522
} else := 523 if {
	x == 523
} else := 524 if {
	x == 524
} else := 525 if {
	x == 525
} else := 526 if {
	x == 526
} else := 527 if {
	x == 527
} else := 528 if {
	x == 528
} else := 529 if {
	x == 529
} else := 530 if {
	x == 530
} else := 531 if {
	x == 531
} else := 532 if {
	x == 532
} else := 533 if {
	x == 533
} else := 534 if {
	x == 534
} else := 535 if {
	x == 535
} else := 536 if {
	x == 536
} else := 537 if {
	x == 537
} else := 538 if {
	x == 538
} else := 539 if {
	x == 539
} else := 540 if {
	x == 540
} else := 541 if {
	x == 541
} else := 542 if {
	x == 542
} else := 543 if {
	x == 543
} else := 544 if {
	x == 544
} else := 545 if {
	x == 545
} else := 546 if {
	x == 546
} else := 547 if {
	x == 547
} else := 548 if {
	x == 548
} else := 549 if {
	x == 549
} else := 550 if {
	x == 550
} else := 551 if {
	x == 551
} else := 552 if {
	x == 552
} else := 553 if {
	x == 553
} else := 554 if {
	x == 554
} else := 555 if {
	x == 555
} else := 556 if {
	x == 556
} else := 557 if {
	x == 557
} else := 558 if {
	x == 558
} else := 559 if {
	x == 559
} else := 560 if {
	x == 560
} else := 561 if {
	x == 561
} else := 562 if {
	x == 562
} else := 563 if {
	x == 563
} else := 564 if {
	x == 564
} else := 565 if {
	x == 565
} else := 566 if {
	x == 566
} else := 567 if {
	x == 567
} else := 568 if {
	x == 568
} else := 569 if {
	x == 569
} else := 570 if {
	x == 570
} else := 571 if {
	x == 571
} else := 572 if {
	x == 572
} else := 573 if {
	x == 573
} else := 574 if {
	x == 574
} else := 575 if {
	x == 575
} else := 576 if {
	x == 576
} else := 577 if {
	x == 577
} else := 578 if {
	x == 578
} else := 579 if {
	x == 579
} else := 580 if {
	x == 580
} else := 581 if {
	x == 581
} else := 582 if {
	x == 582
} else := 583 if {
	x == 583
} else := 584 if {
	x == 584
} else := 585 if {
	x == 585
} else := 586 if {
	x == 586
} else := 587 if {
	x == 587
} else := 588 if {
	x == 588
} else := 589 if {
	x == 589
} else := 590 if {
	x == 590
} else := 591 if {
	x == 591
} else := 592 if {
	x == 592
} else := 593 if {
	x == 593
} else := 594 if {
	x == 594
} else := 595 if {
	x == 595
} else := 596 if {
	x == 596
} else := 597 if {
	x == 597
} else := 598 if {
	x == 598
} else := 599 if {
	x == 599
} else := 600 if {
	x == 600
} else := 601 if {
	x == 601
} else := 602 if {
	x == 602
} else := 603 if {
	x == 603
} else := 604 if {
	x == 604
} else := 605 if {
	x == 605
} else := 606 if {
	x == 606
} else := 607 if {
	x == 607
} else := 608 if {
	x == 608
} else := 609 if {
	x == 609
} else := 610 if {
	x == 610
} else := 611 if {
	x == 611
} else := 612 if {
	x == 612
} else := 613 if {
	x == 613
} else := 614 if {
	x == 614
} else := 615 if {
	x == 615
} else := 616 if {
	x == 616
} else := 617 if {
	x == 617
} else := 618 if {
	x == 618
} else := 619 if {
	x == 619
} else := 620 if {
	x == 620
} else := 621 if {
	x == 621
} else := 622 if {
	x == 622
} else := 623 if {
	x == 623
} else := 624 if {
	x == 624
} else := 625 if {
	x == 625
} else := 626 if {
	x == 626
} else := 627 if {
	x == 627
} else := 628 if {
	x == 628
} else := 629 if {
	x == 629
} else := 630 if {
	x == 630
} else := 631 if {
	x == 631
} else := 632 if {
	x == 632
} else := 633 if {
	x == 633
} else := 634 if {
	x == 634
} else := 635 if {
	x == 635
} else := 636 if {
	x == 636
} else := 637 if {
	x == 637
} else := 638 if {
	x == 638
} else := 639 if {
	x == 639
} else := 640 if {
	x == 640
} else := 641 if {
	x == 641
} else := 642 if {
	x == 642
} else := 643 if {
	x == 643
} else := 644 if {
	x == 644
} else := 645 if {
	x == 645
} else := 646 if {
	x == 646
} else := 647 if {
	x == 647
} else := 648 if {
	x == 648
} else := 649 if {
	x == 649
} else := 650 if {
	x == 650
} else := 651 if {
	x == 651
} else := 652 if {
	x == 652
} else := 653 if {
	x == 653
} else := 654 if {
	x == 654
} else := 655 if {
	x == 655
} else := 656 if {
	x == 656
} else := 657 if {
	x == 657
} else := 658 if {
	x == 658
} else := 659 if {
	x == 659
} else := 660 if {
	x == 660
} else := 661 if {
	x == 661
} else := 662 if {
	x == 662
} else := 663 if {
	x == 663
} else := 664 if {
	x == 664
} else := 665 if {
	x == 665
} else := 666 if {
	x == 666
} else := 667 if {
	x == 667
} else := 668 if {
	x == 668
} else := 669 if {
	x == 669
} else := 670 if {
	x == 670
} else := 671 if {
	x == 671
} else := 672 if {
	x == 672
} else := 673 if {
	x == 673
} else := 674 if {
	x == 674
} else := 675 if {
	x == 675
} else := 676 if {
	x == 676
} else := 677 if {
	x == 677
} else := 678 if {
	x == 678
} else := 679 if {
	x == 679
} else := 680 if {
	x == 680
} else := 681 if {
	x == 681
} else := 682 if {
	x == 682
} else := 683 if {
	x == 683
} else := 684 if {
	x == 684
} else := 685 if {
	x == 685
} else := 686 if {
	x == 686
} else := 687 if {
	x == 687
} else := 688 if {
	x == 688
} else := 689 if {
	x == 689
} else := 690 if {
	x == 690
} else := 691 if {
	x == 691
} else := 692 if {
	x == 692
} else := 693 if {
	x == 693
} else := 694 if {
	x == 694
} else := 695 if {
	x == 695
} else := 696 if {
	x == 696
} else := 697 if {
	x == 697
} else := 698 if {
	x == 698
} else := 699 if {
	x == 699
} else := 700 if {
	x == 700
} else := 701 if {
	x == 701
} else := 702 if {
	x == 702
} else := 703 if {
	x == 703
} else := 704 if {
	x == 704
} else := 705 if {
	x == 705
} else := 706 if {
	x == 706
} else := 707 if {
	x == 707
} else := 708 if {
	x == 708
} else := 709 if {
	x == 709
} else := 710 if {
	x == 710
} else := 711 if {
	x == 711
} else := 712 if {
	x == 712
} else := 713 if {
	x == 713
} else := 714 if {
	x == 714
} else := 715 if {
	x == 715
} else := 716 if {
	x == 716
} else := 717 if {
	x == 717
} else := 718 if {
	x == 718
} else := 719 if {
	x == 719
} else := 720 if {
	x == 720
} else := 721 if {
	x == 721
} else := 722 if {
	x == 722
} else := 723 if {
	x == 723
} else := 724 if {
	x == 724
} else := 725 if {
	x == 725
} else := 726 if {
	x == 726
} else := 727 if {
	x == 727
} else := 728 if {
	x == 728
} else := 729 if {
	x == 729
} else := 730 if {
	x == 730
} else := 731 if {
	x == 731
} else := 732 if {
	x == 732
} else := 733 if {
	x == 733
} else := 734 if {
	x == 734
} else := 735 if {
	x == 735
} else := 736 if {
	x == 736
} else := 737 if {
	x == 737
} else := 738 if {
	x == 738
} else := 739 if {
	x == 739
} else := 740 if {
	x == 740
} else := 741 if {
	x == 741
} else := 742 if {
	x == 742
} else := 743 if {
	x == 743
} else := 744 if {
	x == 744
} else := 745 if {
	x == 745
} else := 746 if {
	x == 746
} else := 747 if {
	x == 747
} else := 748 if {
	x == 748
} else := 749 if {
	x == 749
} else := 750 if {
	x == 750
} else := 751 if {
	x == 751
} else := 752 if {
	x == 752
} else := 753 if {
	x == 753
} else := 754 if {
	x == 754
} else := 755 if {
	x == 755
} else := 756 if {
	x == 756
} else := 757 if {
	x == 757
} else := 758 if {
	x == 758
} else := 759 if {
	x == 759
} else := 760 if {
	x == 760
} else := 761 if {
	x == 761
} else := 762 if {
	x == 762
} else := 763 if {
	x == 763
} else := 764 if {
	x == 764
} else := 765 if {
	x == 765
} else := 766 if {
	x == 766
} else := 767 if {
	x == 767
} else := 768 if {
	x == 768
} else := 769 if {
	x == 769
} else := 770 if {
	x == 770
} else := 771 if {
	x == 771
} else := 772 if {
	x == 772
} else := 773 if {
	x == 773
} else := 774 if {
	x == 774
} else := 775 if {
	x == 775
} else := 776 if {
	x == 776
} else := 777 if {
	x == 777
} else := 778 if {
	x == 778
} else := 779 if {
	x == 779
} else := 780 if {
	x == 780
} else := 781 if {
	x == 781
} else := 782 if {
	x == 782
} else := 783 if {
	x == 783
} else := 784 if {
	x == 784
} else := 785 if {
	x == 785
} else := 786 if {
	x == 786
} else := 787 if {
	x == 787
} else := 788 if {
	x == 788
} else := 789 if {
	x == 789
} else := 790 if {
	x == 790
} else := 791 if {
	x == 791
} else := 792 if {
	x == 792
} else := 793 if {
	x == 793
} else := 794 if {
	x == 794
} else := 795 if {
	x == 795
} else := 796 if {
	x == 796
} else := 797 if {
	x == 797
} else := 798 if {
	x == 798
} else := 799 if {
	x == 799
} else := 800 if {
	x == 800
} else := 801 if {
	x == 801
} else := 802 if {
	x == 802
} else := 803 if {
	x == 803
} else := 804 if {
	x == 804
} else := 805 if {
	x == 805
} else := 806 if {
	x == 806
} else := 807 if {
	x == 807
} else := 808 if {
	x == 808
} else := 809 if {
	x == 809
} else := 810 if {
	x == 810
} else := 811 if {
	x == 811
} else := 812 if {
	x == 812
} else := 813 if {
	x == 813
} else := 814 if {
	x == 814
} else := 815 if {
	x == 815
} else := 816 if {
	x == 816
} else := 817 if {
	x == 817
} else := 818 if {
	x == 818
} else := 819 if {
	x == 819
} else := 820 if {
	x == 820
} else := 821 if {
	x == 821
} else := 822 if {
	x == 822
} else := 823 if {
	x == 823
} else := 824 if {
	x == 824
} else := 825 if {
	x == 825
} else := 826 if {
	x == 826
} else := 827 if {
	x == 827
} else := 828 if {
	x == 828
} else := 829 if {
	x == 829
} else := 830 if {
	x == 830
} else := 831 if {
	x == 831
} else := 832 if {
	x == 832
} else := 833 if {
	x == 833
} else := 834 if {
	x == 834
} else := 835 if {
	x == 835
} else := 836 if {
	x == 836
} else := 837 if {
	x == 837
} else := 838 if {
	x == 838
} else := 839 if {
	x == 839
} else := 840 if {
	x == 840
} else := 841 if {
	x == 841
} else := 842 if {
	x == 842
} else := 843 if {
	x == 843
} else := 844 if {
	x == 844
} else := 845 if {
	x == 845
} else := 846 if {
	x == 846
} else := 847 if {
	x == 847
} else := 848 if {
	x == 848
} else := 849 if {
	x == 849
} else := 850 if {
	x == 850
} else := 851 if {
	x == 851
} else := 852 if {
	x == 852
} else := 853 if {
	x == 853
} else := 854 if {
	x == 854
} else := 855 if {
	x == 855
} else := 856 if {
	x == 856
} else := 857 if {
	x == 857
} else := 858 if {
	x == 858
} else := 859 if {
	x == 859
} else := 860 if {
	x == 860
} else := 861 if {
	x == 861
} else := 862 if {
	x == 862
} else := 863 if {
	x == 863
} else := 864 if {
	x == 864
} else := 865 if {
	x == 865
} else := 866 if {
	x == 866
} else := 867 if {
	x == 867
} else := 868 if {
	x == 868
} else := 869 if {
	x == 869
} else := 870 if {
	x == 870
} else := 871 if {
	x == 871
} else := 872 if {
	x == 872
} else := 873 if {
	x == 873
} else := 874 if {
	x == 874
} else := 875 if {
	x == 875
} else := 876 if {
	x == 876
} else := 877 if {
	x == 877
} else := 878 if {
	x == 878
} else := 879 if {
	x == 879
} else := 880 if {
	x == 880
} else := 881 if {
	x == 881
} else := 882 if {
	x == 882
} else := 883 if {
	x == 883
} else := 884 if {
	x == 884
} else := 885 if {
	x == 885
} else := 886 if {
	x == 886
} else := 887 if {
	x == 887
} else := 888 if {
	x == 888
} else := 889 if {
	x == 889
} else := 890 if {
	x == 890
} else := 891 if {
	x == 891
} else := 892 if {
	x == 892
} else := 893 if {
	x == 893
} else := 894 if {
	x == 894
} else := 895 if {
	x == 895
} else := 896 if {
	x == 896
} else := 897 if {
	x == 897
} else := 898 if {
	x == 898
} else := 899 if {
	x == 899
} else := 900 if {
	x == 900
} else := 901 if {
	x == 901
} else := 902 if {
	x == 902
} else := 903 if {
	x == 903
} else := 904 if {
	x == 904
} else := 905 if {
	x == 905
} else := 906 if {
	x == 906
} else := 907 if {
	x == 907
} else := 908 if {
	x == 908
} else := 909 if {
	x == 909
} else := 910 if {
	x == 910
} else := 911 if {
	x == 911
} else := 912 if {
	x == 912
} else := 913 if {
	x == 913
} else := 914 if {
	x == 914
} else := 915 if {
	x == 915
} else := 916 if {
	x == 916
} else := 917 if {
	x == 917
} else := 918 if {
	x == 918
} else := 919 if {
	x == 919
} else := 920 if {
	x == 920
} else := 921 if {
	x == 921
} else := 922 if {
	x == 922
} else := 923 if {
	x == 923
} else := 924 if {
	x == 924
} else := 925 if {
	x == 925
} else := 926 if {
	x == 926
} else := 927 if {
	x == 927
} else := 928 if {
	x == 928
} else := 929 if {
	x == 929
} else := 930 if {
	x == 930
} else := 931 if {
	x == 931
} else := 932 if {
	x == 932
} else := 933 if {
	x == 933
} else := 934 if {
	x == 934
} else := 935 if {
	x == 935
} else := 936 if {
	x == 936
} else := 937 if {
	x == 937
} else := 938 if {
	x == 938
} else := 939 if {
	x == 939
} else := 940 if {
	x == 940
} else := 941 if {
	x == 941
} else := 942 if {
	x == 942
} else := 943 if {
	x == 943
} else := 944 if {
	x == 944
} else := 945 if {
	x == 945
} else := 946 if {
	x == 946
} else := 947 if {
	x == 947
} else := 948 if {
	x == 948
} else := 949 if {
	x == 949
} else := 950 if {
	x == 950
} else := 951 if {
	x == 951
} else := 952 if {
	x == 952
} else := 953 if {
	x == 953
} else := 954 if {
	x == 954
} else := 955 if {
	x == 955
} else := 956 if {
	x == 956
} else := 957 if {
	x == 957
} else := 958 if {
	x == 958
} else := 959 if {
	x == 959
} else := 960 if {
	x == 960
} else := 961 if {
	x == 961
} else := 962 if {
	x == 962
} else := 963 if {
	x == 963
} else := 964 if {
	x == 964
} else := 965 if {
	x == 965
} else := 966 if {
	x == 966
} else := 967 if {
	x == 967
} else := 968 if {
	x == 968
} else := 969 if {
	x == 969
} else := 970 if {
	x == 970
} else := 971 if {
	x == 971
} else := 972 if {
	x == 972
} else := 973 if {
	x == 973
} else := 974 if {
	x == 974
} else := 975 if {
	x == 975
} else := 976 if {
	x == 976
} else := 977 if {
	x == 977
} else := 978 if {
	x == 978
} else := 979 if {
	x == 979
} else := 980 if {
	x == 980
} else := 981 if {
	x == 981
} else := 982 if {
	x == 982
} else := 983 if {
	x == 983
} else := 984 if {
	x == 984
} else := 985 if {
	x == 985
} else := 986 if {
	x == 986
} else := 987 if {
	x == 987
} else := 988 if {
	x == 988
} else := 989 if {
	x == 989
} else := 990 if {
	x == 990
} else := 991 if {
	x == 991
} else := 992 if {
	x == 992
} else := 993 if {
	x == 993
} else := 994 if {
	x == 994
} else := 995 if {
	x == 995
} else := 996 if {
	x == 996
} else := 997 if {
	x == 997
} else := 998 if {
	x == 998
} else := 999 if {
	x == 999
} else := 1000 if {
	x == 1000
} else := 1001 if {
	x == 1001
} else := 1002 if {
	x == 1002
} else := 1003 if {
	x == 1003
} else := 1004 if {
	x == 1004
} else := 1005 if {
	x == 1005
} else := 1006 if {
	x == 1006
} else := 1007 if {
	x == 1007
} else := 1008 if {
	x == 1008
} else := 1009 if {
	x == 1009
} else := 1010 if {
	x == 1010
} else := 1011 if {
	x == 1011
} else := 1012 if {
	x == 1012
} else := 1013 if {
	x == 1013
} else := 1014 if {
	x == 1014
} else := 1015 if {
	x == 1015
} else := 1016 if {
	x == 1016
} else := 1017 if {
	x == 1017
} else := 1018 if {
	x == 1018
} else := 1019 if {
	x == 1019
} else := 1020 if {
	x == 1020
} else := 1021 if {
	x == 1021
} else := 1022 if {
	x == 1022
} else := 1023 if {
	x == 1023
} else := 1024 if {
	x == 1024
} else := 1025 if {
	x == 1025
} else := 1026 if {
	x == 1026
} else := 1027 if {
	x == 1027
} else := 1028 if {
	x == 1028
} else := 1029 if {
	x == 1029
} else := 1030 if {
	x == 1030
} else := 1031 if {
	x == 1031
} else := 1032 if {
	x == 1032
} else := 1033 if {
	x == 1033
} else := 1034 if {
	x == 1034
} else := 1035 if {
	x == 1035
} else := 1036 if {
	x == 1036
} else := 1037 if {
	x == 1037
} else := 1038 if {
	x == 1038
} else := 1039 if {
	x == 1039
} else := 1040 if {
	x == 1040
} else := 1041 if {
	x == 1041
} else := 1042 if {
	x == 1042
} else := 1043 if {
	x == 1043
} else := 1044 if {
	x == 1044
} else := 1045 if {
	x == 1045
} else := 1046 if {
	x == 1046
} else := 1047 if {
	x == 1047
} else := 1048 if {
	x == 1048
} else := 1049 if {
	x == 1049
} else := 1050 if {
	x == 1050
} else := 1051 if {
	x == 1051
} else := 1052 if {
	x == 1052
} else := 1053 if {
	x == 1053
} else := 1054 if {
	x == 1054
} else := 1055 if {
	x == 1055
} else := 1056 if {
	x == 1056
} else := 1057 if {
	x == 1057
} else := 1058 if {
	x == 1058
} else := 1059 if {
	x == 1059
} else := 1060 if {
	x == 1060
} else := 1061 if {
	x == 1061
} else := 1062 if {
	x == 1062
} else := 1063 if {
	x == 1063
} else := 1064 if {
	x == 1064
} else := 1065 if {
	x == 1065
} else := 1066 if {
	x == 1066
} else := 1067 if {
	x == 1067
} else := 1068 if {
	x == 1068
} else := 1069 if {
	x == 1069
} else := 1070 if {
	x == 1070
} else := 1071 if {
	x == 1071
} else := 1072 if {
	x == 1072
} else := 1073 if {
	x == 1073
} else := 1074 if {
	x == 1074
} else := 1075 if {
	x == 1075
} else := 1076 if {
	x == 1076
} else := 1077 if {
	x == 1077
} else := 1078 if {
	x == 1078
} else := 1079 if {
	x == 1079
} else := 1080 if {
	x == 1080
} else := 1081 if {
	x == 1081
} else := 1082 if {
	x == 1082
} else := 1083 if {
	x == 1083
} else := 1084 if {
	x == 1084
} else := 1085 if {
	x == 1085
} else := 1086 if {
	x == 1086
} else := 1087 if {
	x == 1087
} else := 1088 if {
	x == 1088
} else := 1089 if {
	x == 1089
} else := 1090 if {
	x == 1090
} else := 1091 if {
	x == 1091
} else := 1092 if {
	x == 1092
} else := 1093 if {
	x == 1093
} else := 1094 if {
	x == 1094
} else := 1095 if {
	x == 1095
} else := 1096 if {
	x == 1096
} else := 1097 if {
	x == 1097
} else := 1098 if {
	x == 1098
} else := 1099 if {
	x == 1099
} else := 1100 if {
	x == 1100
} else := 1101 if {
	x == 1101
} else := 1102 if {
	x == 1102
} else := 1103 if {
	x == 1103
} else := 1104 if {
	x == 1104
} else := 1105 if {
	x == 1105
} else := 1106 if {
	x == 1106
} else := 1107 if {
	x == 1107
} else := 1108 if {
	x == 1108
} else := 1109 if {
	x == 1109
} else := 1110 if {
	x == 1110
} else := 1111 if {
	x == 1111
} else := 1112 if {
	x == 1112
} else := 1113 if {
	x == 1113
} else := 1114 if {
	x == 1114
} else := 1115 if {
	x == 1115
} else := 1116 if {
	x == 1116
} else := 1117 if {
	x == 1117
} else := 1118 if {
	x == 1118
} else := 1119 if {
	x == 1119
} else := 1120 if {
	x == 1120
} else := 1121 if {
	x == 1121
} else := 1122 if {
	x == 1122
} else := 1123 if {
	x == 1123
} else := 1124 if {
	x == 1124
} else := 1125 if {
	x == 1125
} else := 1126 if {
	x == 1126
} else := 1127 if {
	x == 1127
} else := 1128 if {
	x == 1128
} else := 1129 if {
	x == 1129
} else := 1130 if {
	x == 1130
} else := 1131 if {
	x == 1131
} else := 1132 if {
	x == 1132
} else := 1133 if {
	x == 1133
} else := 1134 if {
	x == 1134
} else := 1135 if {
	x == 1135
} else := 1136 if {
	x == 1136
} else := 1137 if {
	x == 1137
} else := 1138 if {
	x == 1138
} else := 1139 if {
	x == 1139
} else := 1140 if {
	x == 1140
} else := 1141 if {
	x == 1141
} else := 1142 if {
	x == 1142
} else := 1143 if {
	x == 1143
} else := 1144 if {
	x == 1144
} else := 1145 if {
	x == 1145
} else := 1146 if {
	x == 1146
} else := 1147 if {
	x == 1147
} else := 1148 if {
	x == 1148
} else := 1149 if {
	x == 1149
} else := 1150 if {
	x == 1150
} else := 1151 if {
	x == 1151
} else := 1152 if {
	x == 1152
} else := 1153 if {
	x == 1153
} else := 1154 if {
	x == 1154
} else := 1155 if {
	x == 1155
} else := 1156 if {
	x == 1156
} else := 1157 if {
	x == 1157
} else := 1158 if {
	x == 1158
} else := 1159 if {
	x == 1159
} else := 1160 if {
	x == 1160
} else := 1161 if {
	x == 1161
} else := 1162 if {
	x == 1162
} else := 1163 if {
	x == 1163
} else := 1164 if {
	x == 1164
} else := 1165 if {
	x == 1165
} else := 1166 if {
	x == 1166
} else := 1167 if {
	x == 1167
} else := 1168 if {
	x == 1168
} else := 1169 if {
	x == 1169
} else := 1170 if {
	x == 1170
} else := 1171 if {
	x == 1171
} else := 1172 if {
	x == 1172
} else := 1173 if {
	x == 1173
} else := 1174 if {
	x == 1174
} else := 1175 if {
	x == 1175
} else := 1176 if {
	x == 1176
} else := 1177 if {
	x == 1177
} else := 1178 if {
	x == 1178
} else := 1179 if {
	x == 1179
} else := 1180 if {
	x == 1180
} else := 1181 if {
	x == 1181
} else := 1182 if {
	x == 1182
} else := 1183 if {
	x == 1183
} else := 1184 if {
	x == 1184
} else := 1185 if {
	x == 1185
} else := 1186 if {
	x == 1186
} else := 1187 if {
	x == 1187
} else := 1188 if {
	x == 1188
} else := 1189 if {
	x == 1189
} else := 1190 if {
	x == 1190
} else := 1191 if {
	x == 1191
} else := 1192 if {
	x == 1192
} else := 1193 if {
	x == 1193
} else := 1194 if {
	x == 1194
} else := 1195 if {
	x == 1195
} else := 1196 if {
	x == 1196
} else := 1197 if {
	x == 1197
} else := 1198 if {
	x == 1198
} else := 1199 if {
	x == 1199
} else := 1200 if {
	x == 1200
} else := 1201 if {
	x == 1201
} else := 1202 if {
	x == 1202
} else := 1203 if {
	x == 1203
} else := 1204 if {
	x == 1204
} else := 1205 if {
	x == 1205
} else := 1206 if {
	x == 1206
} else := 1207 if {
	x == 1207
} else := 1208 if {
	x == 1208
} else := 1209 if {
	x == 1209
} else := 1210 if {
	x == 1210
} else := 1211 if {
	x == 1211
} else := 1212 if {
	x == 1212
} else := 1213 if {
	x == 1213
} else := 1214 if {
	x == 1214
} else := 1215 if {
	x == 1215
} else := 1216 if {
	x == 1216
} else := 1217 if {
	x == 1217
} else := 1218 if {
	x == 1218
} else := 1219 if {
	x == 1219
} else := 1220 if {
	x == 1220
} else := 1221 if {
	x == 1221
} else := 1222 if {
	x == 1222
} else := 1223 if {
	x == 1223
} else := 1224 if {
	x == 1224
} else := 1225 if {
	x == 1225
} else := 1226 if {
	x == 1226
} else := 1227 if {
	x == 1227
} else := 1228 if {
	x == 1228
} else := 1229 if {
	x == 1229
} else := 1230 if {
	x == 1230
} else := 1231 if {
	x == 1231
} else := 1232 if {
	x == 1232
} else := 1233 if {
	x == 1233
} else := 1234 if {
	x == 1234
} else := 1235 if {
	x == 1235
} else := 1236 if {
	x == 1236
} else := 1237 if {
	x == 1237
} else := 1238 if {
	x == 1238
} else := 1239 if {
	x == 1239
} else := 1240 if {
	x == 1240
} else := 1241 if {
	x == 1241
} else := 1242 if {
	x == 1242
} else := 1243 if {
	x == 1243
} else := 1244 if {
	x == 1244
} else := 1245 if {
	x == 1245
} else := 1246 if {
	x == 1246
} else := 1247 if {
	x == 1247
} else := 1248 if {
	x == 1248
} else := 1249 if {
	x == 1249
} else := 1250 if {
	x == 1250
} else := 1251 if {
	x == 1251
} else := 1252 if {
	x == 1252
} else := 1253 if {
	x == 1253
} else := 1254 if {
	x == 1254
} else := 1255 if {
	x == 1255
} else := 1256 if {
	x == 1256
} else := 1257 if {
	x == 1257
} else := 1258 if {
	x == 1258
} else := 1259 if {
	x == 1259
} else := 1260 if {
	x == 1260
} else := 1261 if {
	x == 1261
} else := 1262 if {
	x == 1262
} else := 1263 if {
	x == 1263
} else := 1264 if {
	x == 1264
} else := 1265 if {
	x == 1265
} else := 1266 if {
	x == 1266
} else := 1267 if {
	x == 1267
} else := 1268 if {
	x == 1268
} else := 1269 if {
	x == 1269
} else := 1270 if {
	x == 1270
} else := 1271 if {
	x == 1271
} else := 1272 if {
	x == 1272
} else := 1273 if {
	x == 1273
} else := 1274 if {
	x == 1274
} else := 1275 if {
	x == 1275
} else := 1276 if {
	x == 1276
} else := 1277 if {
	x == 1277
} else := 1278 if {
	x == 1278
} else := 1279 if {
	x == 1279
} else := 1280 if {
	x == 1280
} else := 1281 if {
	x == 1281
} else := 1282 if {
	x == 1282
} else := 1283 if {
	x == 1283
} else := 1284 if {
	x == 1284
} else := 1285 if {
	x == 1285
} else := 1286 if {
	x == 1286
} else := 1287 if {
	x == 1287
} else := 1288 if {
	x == 1288
} else := 1289 if {
	x == 1289
} else := 1290 if {
	x == 1290
} else := 1291 if {
	x == 1291
} else := 1292 if {
	x == 1292
} else := 1293 if {
	x == 1293
} else := 1294 if {
	x == 1294
} else := 1295 if {
	x == 1295
} else := 1296 if {
	x == 1296
} else := 1297 if {
	x == 1297
} else := 1298 if {
	x == 1298
} else := 1299 if {
	x == 1299
} else := 1300 if {
	x == 1300
} else := 1301 if {
	x == 1301
} else := 1302 if {
	x == 1302
} else := 1303 if {
	x == 1303
} else := 1304 if {
	x == 1304
} else := 1305 if {
	x == 1305
} else := 1306 if {
	x == 1306
} else := 1307 if {
	x == 1307
} else := 1308 if {
	x == 1308
} else := 1309 if {
	x == 1309
} else := 1310 if {
	x == 1310
} else := 1311 if {
	x == 1311
} else := 1312 if {
	x == 1312
} else := 1313 if {
	x == 1313
} else := 1314 if {
	x == 1314
} else := 1315 if {
	x == 1315
} else := 1316 if {
	x == 1316
} else := 1317 if {
	x == 1317
} else := 1318 if {
	x == 1318
} else := 1319 if {
	x == 1319
} else := 1320 if {
	x == 1320
} else := 1321 if {
	x == 1321
} else := 1322 if {
	x == 1322
} else := 1323 if {
	x == 1323
} else := 1324 if {
	x == 1324
} else := 1325 if {
	x == 1325
} else := 1326 if {
	x == 1326
} else := 1327 if {
	x == 1327
} else := 1328 if {
	x == 1328
} else := 1329 if {
	x == 1329
} else := 1330 if {
	x == 1330
} else := 1331 if {
	x == 1331
} else := 1332 if {
	x == 1332
} else := 1333 if {
	x == 1333
} else := 1334 if {
	x == 1334
} else := 1335 if {
	x == 1335
} else := 1336 if {
	x == 1336
} else := 1337 if {
	x == 1337
} else := 1338 if {
	x == 1338
} else := 1339 if {
	x == 1339
} else := 1340 if {
	x == 1340
} else := 1341 if {
	x == 1341
} else := 1342 if {
	x == 1342
} else := 1343 if {
	x == 1343
} else := 1344 if {
	x == 1344
} else := 1345 if {
	x == 1345
} else := 1346 if {
	x == 1346
} else := 1347 if {
	x == 1347
} else := 1348 if {
	x == 1348
} else := 1349 if {
	x == 1349
} else := 1350 if {
	x == 1350
} else := 1351 if {
	x == 1351
} else := 1352 if {
	x == 1352
} else := 1353 if {
	x == 1353
} else := 1354 if {
	x == 1354
} else := 1355 if {
	x == 1355
} else := 1356 if {
	x == 1356
} else := 1357 if {
	x == 1357
} else := 1358 if {
	x == 1358
} else := 1359 if {
	x == 1359
} else := 1360 if {
	x == 1360
} else := 1361 if {
	x == 1361
} else := 1362 if {
	x == 1362
} else := 1363 if {
	x == 1363
} else := 1364 if {
	x == 1364
} else := 1365 if {
	x == 1365
} else := 1366 if {
	x == 1366
} else := 1367 if {
	x == 1367
} else := 1368 if {
	x == 1368
} else := 1369 if {
	x == 1369
} else := 1370 if {
	x == 1370
} else := 1371 if {
	x == 1371
} else := 1372 if {
	x == 1372
} else := 1373 if {
	x == 1373
} else := 1374 if {
	x == 1374
} else := 1375 if {
	x == 1375
} else := 1376 if {
	x == 1376
} else := 1377 if {
	x == 1377
} else := 1378 if {
	x == 1378
} else := 1379 if {
	x == 1379
} else := 1380 if {
	x == 1380
} else := 1381 if {
	x == 1381
} else := 1382 if {
	x == 1382
} else := 1383 if {
	x == 1383
} else := 1384 if {
	x == 1384
} else := 1385 if {
	x == 1385
} else := 1386 if {
	x == 1386
} else := 1387 if {
	x == 1387
} else := 1388 if {
	x == 1388
} else := 1389 if {
	x == 1389
} else := 1390 if {
	x == 1390
} else := 1391 if {
	x == 1391
} else := 1392 if {
	x == 1392
} else := 1393 if {
	x == 1393
} else := 1394 if {
	x == 1394
} else := 1395 if {
	x == 1395
} else := 1396 if {
	x == 1396
} else := 1397 if {
	x == 1397
} else := 1398 if {
	x == 1398
} else := 1399 if {
	x == 1399
} else := 1400 if {
	x == 1400
} else := 1401 if {
	x == 1401
} else := 1402 if {
	x == 1402
} else := 1403 if {
	x == 1403
} else := 1404 if {
	x == 1404
} else := 1405 if {
	x == 1405
} else := 1406 if {
	x == 1406
} else := 1407 if {
	x == 1407
} else := 1408 if {
	x == 1408
} else := 1409 if {
	x == 1409
} else := 1410 if {
	x == 1410
} else := 1411 if {
	x == 1411
} else := 1412 if {
	x == 1412
} else := 1413 if {
	x == 1413
} else := 1414 if {
	x == 1414
} else := 1415 if {
	x == 1415
} else := 1416 if {
	x == 1416
} else := 1417 if {
	x == 1417
} else := 1418 if {
	x == 1418
} else := 1419 if {
	x == 1419
} else := 1420 if {
	x == 1420
} else := 1421 if {
	x == 1421
} else := 1422 if {
	x == 1422
} else := 1423 if {
	x == 1423
} else := 1424 if {
	x == 1424
} else := 1425 if {
	x == 1425
} else := 1426 if {
	x == 1426
} else := 1427 if {
	x == 1427
} else := 1428 if {
	x == 1428
} else := 1429 if {
	x == 1429
} else := 1430 if {
	x == 1430
} else := 1431 if {
	x == 1431
} else := 1432 if {
	x == 1432
} else := 1433 if {
	x == 1433
} else := 1434 if {
	x == 1434
} else := 1435 if {
	x == 1435
} else := 1436 if {
	x == 1436
} else := 1437 if {
	x == 1437
} else := 1438 if {
	x == 1438
} else := 1439 if {
	x == 1439
} else := 1440 if {
	x == 1440
} else := 1441 if {
	x == 1441
} else := 1442 if {
	x == 1442
} else := 1443 if {
	x == 1443
} else := 1444 if {
	x == 1444
} else := 1445 if {
	x == 1445
} else := 1446 if {
	x == 1446
} else := 1447 if {
	x == 1447
} else := 1448 if {
	x == 1448
} else := 1449 if {
	x == 1449
} else := 1450 if {
	x == 1450
} else := 1451 if {
	x == 1451
} else := 1452 if {
	x == 1452
} else := 1453 if {
	x == 1453
} else := 1454 if {
	x == 1454
} else := 1455 if {
	x == 1455
} else := 1456 if {
	x == 1456
} else := 1457 if {
	x == 1457
} else := 1458 if {
	x == 1458
} else := 1459 if {
	x == 1459
} else := 1460 if {
	x == 1460
} else := 1461 if {
	x == 1461
} else := 1462 if {
	x == 1462
} else := 1463 if {
	x == 1463
} else := 1464 if {
	x == 1464
} else := 1465 if {
	x == 1465
} else := 1466 if {
	x == 1466
} else := 1467 if {
	x == 1467
} else := 1468 if {
	x == 1468
} else := 1469 if {
	x == 1469
} else := 1470 if {
	x == 1470
} else := 1471 if {
	x == 1471
} else := 1472 if {
	x == 1472
} else := 1473 if {
	x == 1473
} else := 1474 if {
	x == 1474
} else := 1475 if {
	x == 1475
} else := 1476 if {
	x == 1476
} else := 1477 if {
	x == 1477
} else := 1478 if {
	x == 1478
} else := 1479 if {
	x == 1479
} else := 1480 if {
	x == 1480
} else := 1481 if {
	x == 1481
} else := 1482 if {
	x == 1482
} else := 1483 if {
	x == 1483
} else := 1484 if {
	x == 1484
} else := 1485 if {
	x == 1485
} else := 1486 if {
	x == 1486
} else := 1487 if {
	x == 1487
} else := 1488 if {
	x == 1488
} else := 1489 if {
	x == 1489
} else := 1490 if {
	x == 1490
} else := 1491 if {
	x == 1491
} else := 1492 if {
	x == 1492
} else := 1493 if {
	x == 1493
} else := 1494 if {
	x == 1494
} else := 1495 if {
	x == 1495
} else := 1496 if {
	x == 1496
} else := 1497 if {
	x == 1497
} else := 1498 if {
	x == 1498
} else := 1499 if {
	x == 1499
} else := 1500 if {
	x == 1500
}
