namespace JarLabel.Tests.Hazards.Limits;

/// <summary>Acute toxicity. <c>oral-300</c> is a made-up ingredient with that estimate by mouth, <c>dermal-</c> through the skin, <c>vapor-</c> by breathing.
/// The sum is of shares over estimates; at 0.05 the mixture's estimate is 2000, at 5 (vapour) 20.</summary>
internal static class PoisonRows
{
    internal const string Table = """
        oral-5=100                         | H300/1 | H300/1 | table 3.1.1 / A.1.1: an upper end belongs to its category
        oral-6=100                         | H300/2 | H300/2 | over 5
        oral-50=100                        | H300/2 | H300/2 | up to 50
        oral-51=100                        | H301   | H301   | over 50
        oral-300=100                       | H301   | H301   | up to 300
        oral-301=100                       | H302   | H302   | over 300
        oral-2000=100                      | H302   | H302   | up to 2000
        oral-2001=100                      | -      | -      | over 2000
        oral-1=0.1                         | H302   | H302   | table 1.1: category 1 counts from 0.1 %; 0.1
        oral-1=0.09                        | -      | -      | below 0.1 %; counted it would be 0.09
        oral-6=0.1,oral-500=20             | H302   | H302   | category 2 from 0.1 %; 0.0167 + 0.04
        oral-6=0.09,oral-500=20            | -      | -      | counted it would be 0.015 + 0.04
        oral-60=0.1,oral-500=24.5          | H302   | H302   | category 3 from 0.1 %; 0.0017 + 0.049
        oral-60=0.09,oral-500=24.5         | -      | -      | counted it would be 0.0015 + 0.049
        oral-500=1,oral-100=4.9            | H302   | H302   | category 4 from 1 %; 0.002 + 0.049
        oral-500=0.9,oral-100=4.9          | -      | -      | counted it would be 0.0018 + 0.049
        oral-5000=60,oral-100=4            | -      | H302   | A.1.3.6.1(a): up to 5000 counts in the US; 0.012 + 0.04
        oral-5001=60,oral-100=4            | -      | -      | over 5000 nowhere
        oral-2001=21,oral-100=4            | -      | H302   | over 2000; 0.0105 + 0.04
        oral-2000=20,oral-100=4            | H302   | H302   | category 4 counts everywhere; 0.01 + 0.04
        oral-2001=1,oral-100=4.96          | -      | H302   | from 1 %; 0.0005 + 0.0496
        oral-2001=0.9,oral-100=4.96        | -      | -      | counted it would be 0.00045 + 0.0496
        oral-1600=16,oral-200=4,oral-3450=80 | -    | H302   | UN example: 1880 with the third, 3333 without
        unknown=10,oral-2000=90            | H225   | H225   | 3.1.3.6.2.3: 10 % unknown changes nothing; 0.045 x 2000 is less than 100
        unknown=10.1,oral-2000=89.9        | H225 H302 | H225 H302 | over 10 %: 0.04495 x 2000 is 89.9 of 89.9
        dermal-50=100                      | H310/1 | H310/1 | up to 50
        dermal-51=100                      | H310/2 | H310/2 | over 50
        dermal-200=100                     | H310/2 | H310/2 | up to 200
        dermal-201=100                     | H311   | H311   | over 200
        dermal-1000=100                    | H311   | H311   | up to 1000
        dermal-1001=100                    | H312   | H312   | over 1000
        dermal-2000=100                    | H312   | H312   | up to 2000
        dermal-2001=100                    | -      | -      | over 2000
        dermal-1=0.1                       | H311   | H311   | category 1 from 0.1 %; 0.1, which is 1000
        dermal-1=0.09                      | -      | -      | below 0.1 %; counted it would be 0.09
        dermal-60=0.1,dermal-500=24.5      | H312   | H312   | category 2 from 0.1 %; 0.0017 + 0.049
        dermal-60=0.09,dermal-500=24.5     | -      | -      | counted it would be 0.0015 + 0.049
        dermal-201=0.1,dermal-500=24.8     | H312   | H312   | category 3 from 0.1 %; 0.0005 + 0.0496
        dermal-201=0.09,dermal-500=24.8    | -      | -      | counted it would be 0.00045 + 0.0496
        dermal-1100=1,dermal-300=14.8      | H312   | H312   | category 4 from 1 %; 0.0009 + 0.0493
        dermal-1100=0.9,dermal-300=14.8    | -      | -      | counted it would be 0.0008 + 0.0493
        dermal-5000=60,dermal-300=12       | -      | H312   | up to 5000 in the US; 0.012 + 0.04
        dermal-5001=60,dermal-300=12       | -      | -      | over 5000 nowhere
        vapor-0.5=100                      | H330/1 | H330/1 | up to 0.5
        vapor-0.6=100                      | H330/2 | H330/2 | over 0.5
        vapor-2=100                        | H330/2 | H330/2 | up to 2
        vapor-2.1=100                      | H331   | H331   | over 2
        vapor-10=100                       | H331   | H331   | up to 10
        vapor-10.1=100                     | H332   | H332   | over 10
        vapor-20=100                       | H332   | H332   | up to 20
        vapor-20.1=100                     | -      | -      | over 20
        vapor-0.01=0.1                     | H331   | H331   | category 1 from 0.1 %; 10, which is 10
        vapor-0.01=0.09                    | -      | -      | below 0.1 %; counted it would be 9
        vapor-0.6=0.1,vapor-11=53.5        | H332   | H332   | category 2 from 0.1 %; 0.167 + 4.864
        vapor-0.6=0.09,vapor-11=53.5       | -      | -      | counted it would be 0.15 + 4.864
        vapor-2.1=0.1,vapor-11=54.6        | H332   | H332   | category 3 from 0.1 %; 0.0476 + 4.9636
        vapor-2.1=0.09,vapor-11=54.6       | -      | -      | counted it would be 0.0429 + 4.9636
        vapor-11=1,vapor-3=14.8            | H332   | H332   | category 4 from 1 %; 0.0909 + 4.9333
        vapor-11=0.9,vapor-3=14.8          | -      | -      | counted it would be 0.0818 + 4.9333
        vapor-50=60,vapor-3=12             | -      | H332   | the dose that 5000 mg/kg is by breathing, 50 mg/L; 1.2 + 4
        vapor-50.1=60,vapor-3=12           | -      | -      | over it nowhere
        """;
}
